package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.SwingUtilities;
import org.relegend.map.HazardZone;
import org.relegend.map.ZoneId;
import org.relegend.viewer.control.Actions;
import org.relegend.viewer.control.KeyText;
import org.relegend.viewer.control.ModeContext;
import org.relegend.viewer.control.ModeView;
import org.relegend.viewer.control.OpenedPictures;
import org.relegend.viewer.control.QuestionBar;
import org.relegend.viewer.control.UserAction;
import org.relegend.viewer.mode.Modes;
import org.relegend.viewer.mode.bench.JobBar;
import org.relegend.viewer.mode.bench.OpenJob;
import org.relegend.viewer.mode.twins.TwinPanel;
import org.relegend.viewer.mode.twins.TwinRunner;
import org.relegend.viewer.mode.zone.ZoneTool;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.TaskRunner;

/** An open map: the find field, the two pictures, the node strip and the status line. */
final class MapPanel extends JPanel {
  private final Session session;
  private final OpenedPictures shelf;
  private static final double PAGE_SHARE = 0.45;

  private final JSplitPane pictures = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT);
  private final LowerPanel bottom;
  private final Map<Mode, ModeView> views;
  private final PhotoLayer layering;
  private final FindField field = new FindField();
  private final TopBar top;
  private final FindController find;
  private final PicturePane page;
  private final PicturePane photo;
  private final NodeStrip strip;
  private final QuestionBar question;
  private final StatusLine status;
  private final JobBar jobBar;
  private final TwinPanel twins;
  private final LinkedPanes beside;
  private final FocusRouter typing;
  private PicturePane active;
  private boolean laidOut;
  private Mode shown;

  /**
   * @param jobs for what a person waits for while typing
   * @param slow for what may take seconds
   */
  MapPanel(Session session, OpenedPictures shelf, Actions acts, TaskRunner jobs, TaskRunner slow) {
    super(new BorderLayout());
    this.session = session;
    this.shelf = shelf;
    Overlays scene = new Overlays(session, shelf);
    status = new StatusLine(session, acts);
    views =
        Modes.views(
            new ModeContext(session, shelf, acts, jobs, status::watch, this::isDisplayable));
    shown = session.mode();
    top = new TopBar(session, acts, field, views, this::take);
    page =
        new PicturePane(
            session,
            scene,
            this::view,
            "page",
            session.desk()::left,
            session.desk()::lefts,
            session.desk()::showLeft,
            BorderLayout.WEST);
    photo =
        new PicturePane(
            session,
            scene,
            this::view,
            "photo",
            session.desk()::right,
            session.desk()::rights,
            session.desk()::showRight,
            BorderLayout.EAST);
    active = photo;
    page.onFocus(() -> active = page);
    photo.onFocus(() -> active = photo);
    question = new QuestionBar(session);
    views.values().forEach(question::add);
    Modes.forms(session).forEach(question::add);
    strip = new NodeStrip(session, scene, question);
    bottom = new LowerPanel(session, jobs, status, strip, this::goToStrip);
    layering = new PhotoLayer(session, shelf, jobs, photo, status::watch);
    jobBar = new JobBar(session);
    twins =
        new TwinPanel(
            session,
            new TwinRunner(session, shelf, slow, status::watch),
            bottom::show,
            this::goToStrip);
    find = new FindController(session, jobs, field, mode -> view(mode).hint(), this::goToStrip);
    beside = new LinkedPanes(session, page, photo, pictures);
    typing = new FocusRouter(session, field, find, question, strip, jobBar);
    typing.after(page);
    typing.after(photo);
    typing.commandsIn(acts);
    add(top, BorderLayout.NORTH);
    add(middle(), BorderLayout.CENTER);
    add(status, BorderLayout.SOUTH);
    session.listen(this::follow);
    session.listen(twins::follow);
    twins.begin();
    session.onLook(
        look -> {
          page.look(look);
          photo.look(look);
        });
  }

  private JComponent middle() {
    pictures.setLeftComponent(page);
    pictures.setRightComponent(photo);
    pictures.setResizeWeight(PAGE_SHARE);
    pictures.setContinuousLayout(true);
    pictures.setPreferredSize(new Dimension(900, 300));
    views.values().forEach(view -> view.panel().ifPresent(bottom::addNamed));
    twins.lists().forEach(bottom::addNamed);
    JPanel lower = new JPanel(new BorderLayout());
    lower.add(jobBar, BorderLayout.NORTH);
    lower.add(bottom, BorderLayout.CENTER);
    JSplitPane all = new JSplitPane(JSplitPane.VERTICAL_SPLIT, pictures, lower);
    all.setResizeWeight(1);
    all.setContinuousLayout(true);
    KeyText.freeIn(pictures);
    KeyText.freeIn(all);
    return all;
  }

  /** Lays the panes out once, by shares of the room there is, when it is first known. */
  @Override
  public void doLayout() {
    super.doLayout();
    if (!laidOut && getWidth() > 0) {
      laidOut = true;
      pictures.setDividerLocation((int) (getWidth() * PAGE_SHARE));
    }
  }

  private void follow(Change change) {
    switch (change) {
      case MAP -> {
        remark();
        bottom.settleMap();
        status.count();
        if (session.room(OpenJob.class).isOpen()) {
          jobBar.refresh();
          bottom.settleJob();
        }
      }
      case PICTURES -> {
        page.refresh();
        photo.refresh();
        status.count();
        layering.drop();
        beside.refresh();
      }
      case CHOICE -> {
        strip.lay();
        jobBar.refresh();
        remark();
        beside.refresh();
        typing.walked();
      }
      case CURSOR -> {
        strip.showCursor();
        jobBar.refresh();
        remark();
        beside.refresh();
        typing.walked();
      }
      case GHOSTS -> {
        remark();
        beside.refresh();
      }
      case JOB -> {
        strip.lay();
        jobBar.refresh();
        bottom.settleJob();
        remark();
      }
      case TOOL -> {
        top.refresh();
        find.refresh();
        strip.followTool();
        remark();
        followMode();
      }
      case EVIDENCE -> top.refresh();
      case QUESTION -> ask();
      case CAUTION -> SwingUtilities.invokeLater(this::caution);
      case NOTICE -> status.say();
      case RIGHTS, TWINS, TWINS_SAID -> {}
    }
    views.values().forEach(view -> view.follow(change));
  }

  private ModeView view(Mode mode) {
    return Objects.requireNonNull(views.get(mode));
  }

  /** What a mode has to show of itself lies below while it is current. */
  private void followMode() {
    ModeView before = view(shown);
    ModeView now = view(session.mode());
    shown = session.mode();
    if (before != now && (before.panel().isPresent() || now.panel().isPresent())) {
      now.panel().map(JComponent::getName).ifPresentOrElse(bottom::show, bottom::showStrip);
      page.canvas().setLoupe(now.hasLoupe());
      photo.canvas().setLoupe(now.hasLoupe());
    }
  }

  /** Lays another photo over the one shown: half, whole, none, in turn. */
  void layOver() {
    layering.step();
  }

  /** The view of this kind. */
  <V extends ModeView> V view(Class<V> kind) {
    return views.values().stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .findFirst()
        .orElseThrow();
  }

  private void ask() {
    boolean asked = session.question().isPresent();
    if (asked) {
      bottom.showStrip();
    }
    strip.showQuestion(asked);
    question.refresh();
  }

  private void remark() {
    page.remark();
    photo.remark();
  }

  /** Takes a tool in hand; one that names or traces has the keyboard in its box. */
  private void take(Mode mode) {
    session.take(mode);
    typing.taken(active);
  }

  /** Takes the mode in hand that this action is for, if it is for one. */
  void take(UserAction action) {
    session.modes().stream()
        .filter(mode -> UserAction.taking(mode) == action)
        .findFirst()
        .ifPresent(this::take);
  }

  private void caution() {
    Optional<List<HazardZone>> zones = session.gate().caution();
    if (zones.isEmpty()) {
      return;
    }
    if (CautionDialog.show(
        SwingUtilities.getWindowAncestor(this), zones.get(), session.document()::nameOf)) {
      session.gate().acknowledge();
    } else {
      session.gate().turnBack();
    }
    typing.route();
  }

  /** With a job, the keyboard is where a reading can be typed at once; commands work there too. */
  void goToStrip() {
    bottom.showStrip();
    typing.leave();
  }

  void read() {
    if (session.room(OpenJob.class).isOpen()) {
      goToStrip();
    } else {
      session.room(OpenJob.class).sayNoJob();
    }
  }

  /** What lies below the pictures. */
  LowerPanel lower() {
    return bottom;
  }

  /** Twins and predicted places. */
  TwinPanel twins() {
    return twins;
  }

  /** The job's photos lie in its own folder. */
  void photosOfUnitIn(Path folder) {
    shelf.also(folder, session.document()::isOwn);
  }

  OpenedPictures shelf() {
    return shelf;
  }

  StatusLine status() {
    return status;
  }

  /** The picture that had the keyboard last. */
  PicturePane active() {
    return active;
  }

  /** The hazard zones drawn on the picture that had the keyboard last, and their names. */
  Map<ZoneId, String> zones() {
    Map<ZoneId, String> names = new LinkedHashMap<>();
    active.zones().forEach(zone -> names.put(zone.id(), session.map().nameOf(zone)));
    return names;
  }

  /** Says why no hazard zone of that picture can be changed. */
  void sayNoZone() {
    active.laid().ifPresent(session.room(ZoneTool.class)::sayNoneDrawn);
  }

  PicturePane page() {
    return page;
  }

  PicturePane photo() {
    return photo;
  }

  void typeName() {
    field.requestFocusInWindow();
    field.selectAll();
  }

  /** Enter: opens a card, sets a place in the middle of the picture, or closes an outline. */
  void enter() {
    if (session.mode().enter()) {
      return;
    }
    if (!session.isAtRest() && active.canvas().isFocusOwner()) {
      active.act("click-middle");
    } else {
      session.walk().open();
    }
  }

  /** Gives the keyboard to the next area: field, page, photo, strip. */
  void nextArea(int by) {
    List<JComponent> areas = List.of(field, page.canvas(), photo.canvas(), strip);
    int now = 0;
    for (int i = 0; i < areas.size(); i++) {
      if (areas.get(i).isFocusOwner()) {
        now = i;
      }
    }
    areas.get(Math.floorMod(now + by, areas.size())).requestFocusInWindow();
  }
}
