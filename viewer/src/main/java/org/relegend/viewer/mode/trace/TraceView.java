package org.relegend.viewer.mode.trace;

import java.util.Locale;
import java.util.stream.Collectors;
import javax.swing.JButton;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;
import org.relegend.table.NetClash;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.ModeContext;
import org.relegend.viewer.control.ModeView;
import org.relegend.viewer.control.QuestionBar;
import org.relegend.viewer.session.Question;
import org.relegend.viewer.session.Session;

/** Asks which pin is meant, and what becomes of pins that are on another net. */
public final class TraceView implements ModeView {
  private final TraceTool tool;
  private final Session session;

  public TraceView(TraceTool tool, ModeContext context) {
    this.tool = tool;
    session = context.session();
  }

  @Override
  public String hint() {
    return "find.trace.hint";
  }

  @Override
  public boolean ask(Question question, QuestionBar bar) {
    if (question instanceof TraceTool.PinsTaken taken) {
      ask(taken, bar);
    } else if (question instanceof TraceTool.WhichPin which) {
      ask(which, bar);
    } else {
      return false;
    }
    return true;
  }

  private void ask(TraceTool.PinsTaken taken, QuestionBar bar) {
    NetClash clash = taken.clash();
    String on = name(clash.other());
    String pins =
        clash.pins().stream()
            .map(pin -> session.map().nameOf(Subject.of(pin)))
            .collect(Collectors.joining(", "));
    bar.say(
        clash.pins().isEmpty()
            ? Messages.of("question.meet", name(clash.wanted()), on)
            : Messages.of("question.taken", pins, on));
    bar.offerText(
        Messages.of("question.taken.join", name(clash.wanted()), on),
        "J",
        () -> tool.answer(taken, NetClash.Choice.JOIN));
    if (!clash.pins().isEmpty()) {
      bar.offer("question.taken.move", "M", () -> tool.answer(taken, NetClash.Choice.MOVE));
    }
    // Enter changes nothing: two nets made one by a slip are hard to take apart again
    bar.begin(
        bar.offer("question.taken.leave", "V", () -> tool.answer(taken, NetClash.Choice.LEAVE)));
  }

  private String name(NetId net) {
    return session.map().nameOf(Subject.of(net));
  }

  private void ask(TraceTool.WhichPin which, QuestionBar bar) {
    bar.say(Messages.of("question.whichpin", session.map().nameOf(which.part())));
    JButton begun = null;
    for (PinRef pin : which.pins()) {
      String key = pin.pin().length() == 1 ? pin.pin().toUpperCase(Locale.ROOT) : "";
      JButton button = bar.offerText(pin.pin(), key, () -> tool.answer(pin));
      begun = begun == null ? button : begun;
    }
    if (begun != null) {
      bar.begin(begun);
    }
  }
}
