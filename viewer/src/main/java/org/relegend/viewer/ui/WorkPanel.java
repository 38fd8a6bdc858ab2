package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.SwingUtilities;
import org.relegend.check.Finding;
import org.relegend.check.Severity;
import org.relegend.map.HazardZone;
import org.relegend.map.ZoneId;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.Tool;
import org.relegend.viewer.work.Jobs;

/** An open map: the find field, the two pictures, the node strip and the status line. */
final class WorkPanel extends JPanel {
  private static final String STRIP = "strip";
  private static final String FINDINGS = "findings";
  private static final String PAIRS = "pairs";
  private static final String CLASHES = "clashes";
  private static final String TRUST = "trust";

  /** Height of the strip at first: its cards whole, and a scroll bar. */
  private static final int BOTTOM = 268;

  private final Session session;
  private final Shelf shelf;
  private static final double PAGE_SHARE = 0.45;

  private final JSplitPane pictures = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT);
  private final JPanel bottom = new JPanel(new CardLayout());
  private final FindingsPanel findings;
  private final PairsPanel pairs;
  private final ClashPanel clashes;
  private final TrustPanel trust;
  private final LiningUp liningUp;
  private final Layering layering;
  private final Straightening straightening;
  private final FindField field = new FindField();
  private final TopBar top;
  private final FindBar find;
  private final PicturePane page;
  private final PicturePane photo;
  private final NodeStrip strip;
  private final QuestionBar question;
  private final StatusLine status;
  private final JobBar jobBar;
  private final JobLists lists;
  private final TwinWork twins;
  private final SideBySide beside;
  private final Typing typing;
  private PicturePane active;
  private boolean laidOut;
  private boolean pairing;
  private boolean byHand;
  private Runnable listChanged = () -> {};

  /**
   * @param jobs for what a person waits for while typing
   * @param slow for what may take seconds
   */
  WorkPanel(Session session, Shelf shelf, Acts acts, Jobs jobs, Jobs slow) {
    super(new BorderLayout());
    this.session = session;
    this.shelf = shelf;
    Scene scene = new Scene(session, shelf);
    top = new TopBar(session, acts, field, this::take);
    page =
        new PicturePane(
            session,
            scene,
            "page",
            session.desk()::left,
            session.desk()::lefts,
            session.desk()::showLeft,
            BorderLayout.WEST);
    photo =
        new PicturePane(
            session,
            scene,
            "photo",
            session.desk()::right,
            session.desk()::rights,
            session.desk()::showRight,
            BorderLayout.EAST);
    active = photo;
    page.onFocus(() -> active = page);
    photo.onFocus(() -> active = photo);
    question = new QuestionBar(session);
    strip = new NodeStrip(session, scene, question);
    status = new StatusLine(session, acts);
    findings = new FindingsPanel(this::goTo, session::mend, () -> showBelow(STRIP));
    pairs = new PairsPanel(session, acts);
    clashes = new ClashPanel(session, this::goToStrip);
    trust = new TrustPanel(session, jobs, this::goToStrip);
    liningUp = new LiningUp(session, shelf, jobs, status, this::isDisplayable);
    layering = new Layering(session, shelf, jobs, photo, status);
    straightening = new Straightening(session, shelf, jobs, status);
    jobBar = new JobBar(session);
    lists = new JobLists(session, jobs, this::goToStrip);
    twins = new TwinWork(session, new TwinWorking(session, shelf, slow, status), this);
    find = new FindBar(session, jobs, field, this::goToStrip);
    beside = new SideBySide(session, page, photo, pictures);
    typing = new Typing(session, field, find, question, strip, jobBar);
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
    bottom.add(strip, STRIP);
    bottom.add(findings, FINDINGS);
    bottom.add(pairs, PAIRS);
    bottom.add(clashes, CLASHES);
    bottom.add(trust, TRUST);
    lists.all().forEach(list -> bottom.add(list, list.getName()));
    twins.lists().forEach(list -> bottom.add(list, list.getName()));
    bottom.setPreferredSize(new Dimension(900, BOTTOM));
    bottom.setMinimumSize(new Dimension(200, 120));
    JPanel lower = new JPanel(new BorderLayout());
    lower.add(jobBar, BorderLayout.NORTH);
    lower.add(bottom, BorderLayout.CENTER);
    JSplitPane all = new JSplitPane(JSplitPane.VERTICAL_SPLIT, pictures, lower);
    all.setResizeWeight(1);
    all.setContinuousLayout(true);
    Keys.freeIn(pictures);
    Keys.freeIn(all);
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
        clashes.settle();
        trust.settle();
        status.count();
        pairs.settle();
        if (session.bench().isOpen()) {
          jobBar.settle();
          lists.settle();
        }
      }
      case PICTURES -> {
        page.settle();
        photo.settle();
        status.count();
        layering.drop();
        pairs.settle();
        liningUp.first();
        beside.settle();
      }
      case CHOICE -> {
        strip.lay();
        jobBar.settle();
        remark();
        beside.settle();
        typing.walked();
      }
      case CURSOR -> {
        strip.showCursor();
        jobBar.settle();
        remark();
        beside.settle();
        typing.walked();
      }
      case GHOSTS -> {
        remark();
        beside.settle();
      }
      case JOB -> {
        strip.lay();
        jobBar.settle();
        lists.settle();
        remark();
      }
      case TOOL -> {
        top.settle();
        find.settle();
        strip.followTool();
        remark();
        followPairs();
        straightening.follow();
      }
      case EVIDENCE -> top.settle();
      case QUESTION -> ask();
      case CAUTION -> SwingUtilities.invokeLater(this::caution);
      case NOTICE -> status.say();
      case RIGHTS, TWINS, TWINS_SAID -> {}
    }
  }

  /** While photos are lined up, their pairs lie below; loupes are on, and what can be is tried. */
  private void followPairs() {
    boolean now = session.tool() == Tool.LINE_UP;
    if (now != pairing) {
      pairing = now;
      showBelow(now ? PAIRS : STRIP);
      page.canvas().setLoupe(now);
      photo.canvas().setLoupe(now);
      if (now && byHand) {
        liningUp.tried();
      } else if (now) {
        liningUp.first();
      }
    }
    pairs.settle();
  }

  /** Lays another photo over the one shown: half, whole, none, in turn. */
  void layOver() {
    layering.step();
  }

  /** Lines the two photos up without clicks. */
  void lineUpAlone() {
    if (session.tool() != Tool.LINE_UP) {
      session.take(Tool.LINE_UP);
    }
    liningUp.again();
  }

  /** Lays the two photos side by side for pairs; they were tried without clicks already. */
  void lineUpByHand() {
    if (session.tool() != Tool.LINE_UP) {
      byHand = true;
      session.take(Tool.LINE_UP);
      byHand = false;
    }
  }

  private void ask() {
    boolean asked = session.question().isPresent();
    if (asked) {
      showBelow(STRIP);
    }
    strip.showQuestion(asked);
    question.settle();
  }

  private void remark() {
    page.remark();
    photo.remark();
  }

  /** Takes a tool in hand; one that names or traces has the keyboard in its box. */
  void take(Tool tool) {
    session.take(tool);
    typing.taken(active);
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
    typing.settle();
  }

  /** Leads to what a finding is about. */
  private void goTo(Finding finding) {
    finding.subjects().stream()
        .findFirst()
        .ifPresentOrElse(
            subject -> session.choose(subject, finding.picture()),
            () -> finding.picture().ifPresent(session.desk()::show));
  }

  /** Shows what the checks found; the button counts what should be mended. */
  void showFindings(List<Finding> found) {
    findings.show(found);
    long grave =
        found.stream().filter(finding -> finding.severity() != Severity.INFORMATION).count();
    status.showFindings((int) grave, (int) (found.size() - grave));
  }

  /** The findings in the place of the node strip, or the strip again. */
  void toggleFindings() {
    if (findings.isVisible()) {
      goToStrip();
    } else {
      showBelow(FINDINGS);
      findings.takeFocus();
    }
  }

  /** What two people said differently, in the place of the node strip; or the strip again. */
  void showClashes() {
    if (clashes.isVisible()) {
      goToStrip();
    } else {
      showBelow(CLASHES);
      clashes.takeFocus();
    }
  }

  /** Who says what on which evidence, in the place of the node strip; or the strip again. */
  void showTrust() {
    if (trust.isVisible()) {
      goToStrip();
    } else {
      showBelow(TRUST);
      trust.takeFocus();
    }
  }

  /** With a job, the keyboard is where a reading can be typed at once; commands work there too. */
  void goToStrip() {
    showBelow(STRIP);
    typing.leave();
  }

  void read() {
    if (session.bench().isOpen()) {
      goToStrip();
    } else {
      session.bench().sayNoJob();
    }
  }

  /** A list of the job in the place of the node strip, or the strip again. */
  void toggleList(String name) {
    RowList list = lists.list(name);
    if (list.isVisible()) {
      goToStrip();
    } else {
      show(list);
    }
  }

  /** A list in the place of the node strip, with the keyboard. */
  void show(RowList list) {
    showBelow(list.getName());
    list.takeFocus();
  }

  /** Twins and predicted places. */
  TwinWork twins() {
    return twins;
  }

  private void showBelow(String what) {
    ((CardLayout) bottom.getLayout()).show(bottom, what);
    listChanged.run();
  }

  /** The list of the job that lies below; empty where none does. */
  String listShown() {
    return lists.shown();
  }

  /** A list of the job in the place of the node strip; nothing for a name that is none's. */
  void showList(String name) {
    lists.named(name).ifPresent(list -> showBelow(list.getName()));
  }

  /** Calls back when something else lies below. */
  void onList(Runnable listener) {
    listChanged = listener;
  }

  /** The job's photos lie in its own folder. */
  void photosOfUnitIn(Path folder) {
    shelf.also(folder, session.document()::isOwn);
  }

  Shelf shelf() {
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
    active.laid().ifPresent(session.outlining()::sayNoneDrawn);
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
    if (session.tool() == Tool.ZONE) {
      session.outlining().close();
    } else if (session.tool() != Tool.LOOK && active.canvas().isFocusOwner()) {
      active.act("click-middle");
    } else {
      session.open();
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
