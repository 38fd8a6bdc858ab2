package org.relegend.viewer.mode.zone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.JButton;
import org.relegend.map.HazardZone;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.map.ZoneId;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.ModeContext;
import org.relegend.viewer.control.ModeDrag;
import org.relegend.viewer.control.ModeView;
import org.relegend.viewer.control.PointerPosition;
import org.relegend.viewer.control.QuestionBar;
import org.relegend.viewer.control.TypedField;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.session.Question;
import org.relegend.viewer.session.Session;

/** The outline as it is drawn; corners of zones can be dragged; what threatens inside is asked. */
public final class ZoneView implements ModeView {
  private final ZoneTool tool;
  private final Session session;

  public ZoneView(ZoneTool tool, ModeContext context) {
    this.tool = tool;
    session = context.session();
  }

  @Override
  public boolean followsPointer(PictureId picture) {
    return !tool.corners(picture).isEmpty();
  }

  @Override
  public List<Overlay> overlays(PictureId picture, Optional<Point> pointer) {
    List<Point> corners = tool.corners(picture);
    return corners.isEmpty() ? List.of() : List.of(new DraftOverlay(corners, pointer));
  }

  @Override
  public Optional<ModeDrag> drag(PictureId picture, PointerPosition at) {
    if (at.shift() || session.document().isReadOnly()) {
      return Optional.empty();
    }
    for (HazardZone zone : session.map().zones()) {
      for (int i = 0; zone.picture().equals(picture) && i < zone.outline().size(); i++) {
        if (zone.outline().get(i).distance(at.at()) <= 1.5 * at.reach()) {
          return Optional.of(new Corner(zone.id(), i));
        }
      }
    }
    return Optional.empty();
  }

  /** A corner of a zone that is dragged. */
  private final class Corner implements ModeDrag {
    private final ZoneId zone;
    private final int corner;

    Corner(ZoneId zone, int corner) {
      this.zone = zone;
      this.corner = corner;
    }

    @Override
    public List<Overlay> preview(Point to) {
      return session.map().zones().find(zone).map(found -> draft(found, to)).orElse(List.of());
    }

    private List<Overlay> draft(HazardZone found, Point to) {
      List<Point> corners = new ArrayList<>(found.outline());
      corners.set(corner, to);
      corners.add(corners.get(0));
      return List.of(new DraftOverlay(corners, Optional.empty()));
    }

    @Override
    public void drop(Point to) {
      tool.moveCorner(zone, corner, to);
    }
  }

  @Override
  public boolean ask(Question question, QuestionBar bar) {
    if (question instanceof ZoneTool.WhichHazard hazard) {
      bar.say(Messages.of("question.hazard"));
      askKind(bar, "", HazardZone.Kind.MAINS, (kind, note) -> tool.answer(hazard, kind, note));
    } else if (question instanceof ZoneTool.ChangeZone zone) {
      bar.say(Messages.of("question.changezone", name(zone.zone())));
      askKind(bar, zone.note(), zone.kind(), (kind, note) -> tool.answer(zone, kind, note));
    } else if (question instanceof ZoneTool.RemoveZone remove) {
      bar.say(Messages.of("question.removezone", name(remove.zone())));
      bar.begin(bar.offer("question.removezone.no", "K", session::back));
      bar.offer("question.removezone.yes", "R", () -> tool.answer(remove));
    } else {
      return false;
    }
    return true;
  }

  private String name(ZoneId zone) {
    return session.map().zones().find(zone).map(session.map()::nameOf).orElse(zone.text());
  }

  /** A key for each kind; the one it has now is ready to be taken, so that a note is Enter. */
  private static void askKind(
      QuestionBar bar,
      String noted,
      HazardZone.Kind now,
      BiConsumer<HazardZone.Kind, String> answer) {
    TypedField note = new TypedField(18);
    note.setText(noted);
    note.addActionListener(entered -> answer.accept(now, note.getText().strip()));
    int key = 0;
    for (HazardZone.Kind kind : HazardZone.Kind.values()) {
      key++;
      JButton button =
          bar.offer(
              "hazard." + Messages.word(kind),
              Integer.toString(key),
              () -> answer.accept(kind, note.getText().strip()));
      if (kind == now) {
        bar.begin(button);
      }
    }
    bar.labelled("question.hazard.note", note);
    note.setName("hazard-note");
  }
}
