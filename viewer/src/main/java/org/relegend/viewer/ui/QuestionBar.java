package org.relegend.viewer.ui;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import org.relegend.bench.State;
import org.relegend.map.HazardZone;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;
import org.relegend.map.ZoneId;
import org.relegend.table.NetClash;
import org.relegend.viewer.session.Question;
import org.relegend.viewer.session.Session;

/** A question that waits for an answer, with a button and a key for each. */
final class QuestionBar extends JPanel {
  private static final int ROW_GAP = 4;

  private final Session session;
  private final List<String> boundKeys = new ArrayList<>();
  private @Nullable Component returnTo;
  private @Nullable Component first;

  QuestionBar(Session session) {
    super(new FlowLayout(FlowLayout.LEADING, 8, ROW_GAP));
    this.session = session;
    setName("question");
  }

  /** Shows the question that is open, or nothing; then the keyboard is back where it was. */
  void settle() {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    if (owner != null && !isAncestorOf(owner)) {
      returnTo = owner;
    }
    removeAll();
    first = null;
    boundKeys.forEach(key -> getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).remove(stroke(key)));
    boundKeys.clear();
    Optional<Question> asked = session.question();
    asked.ifPresent(this::ask);
    if (asked.isEmpty() && returnTo != null) {
      returnTo.requestFocusInWindow();
    }
    revalidate();
    repaint();
  }

  /** While something is asked, the keyboard goes to its first answer, unless it is there. */
  void takeFocus() {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    if (first != null && (owner == null || !isAncestorOf(owner))) {
      first.requestFocusInWindow();
    }
  }

  /** What has the keyboard when the question comes up. */
  private void begin(Component answer) {
    first = answer;
    answer.requestFocusInWindow();
  }

  /** As high as its rows are in the width there is: what doesn't fit in one goes on below. */
  @Override
  public Dimension getPreferredSize() {
    FlowLayout flow = (FlowLayout) getLayout();
    int room = getParent() == null ? 0 : getParent().getWidth();
    int width = flow.getHgap();
    int height = 0;
    int row = 0;
    for (Component component : getComponents()) {
      Dimension size = component.getPreferredSize();
      if (room > 0 && width > flow.getHgap() && width + size.width + flow.getHgap() > room) {
        height += row + ROW_GAP;
        width = flow.getHgap();
        row = 0;
      }
      width += size.width + flow.getHgap();
      row = Math.max(row, size.height);
    }
    return new Dimension(room > 0 ? room : width, height + row + 2 * ROW_GAP);
  }

  private void ask(Question question) {
    if (question instanceof Question.PinsTaken taken) {
      ask(taken);
    } else if (question instanceof Question.WhichPin which) {
      ask(which);
    } else if (question instanceof Question.WhichHazard hazard) {
      say(Texts.of("question.hazard"));
      askKind("", HazardZone.Kind.MAINS, (kind, note) -> session.answer(hazard, kind, note));
    } else if (question instanceof Question.ChangeZone zone) {
      say(Texts.of("question.changezone", name(zone.zone())));
      askKind(zone.note(), zone.kind(), (kind, note) -> session.answer(zone, kind, note));
    } else if (question instanceof Question.WhichCondition part) {
      ask(part);
    } else if (question instanceof Question.WhichTwin twin) {
      String asked = Texts.of("question.twin", session.map().nameOf(twin.subject()));
      typed("whichtwin", asked, 8, name -> session.twinning().answer(twin, name));
    } else if (question instanceof Question.HowFar far) {
      typed("howfar", Texts.of("question.howfar"), 8, distance -> session.answer(far, distance));
    } else if (question instanceof Question.HowLarge board) {
      typed("howlarge", Texts.of("question.howlarge"), 12, size -> session.answer(board, size));
    } else if (question instanceof Question.RemoveEntry remove) {
      ask(remove);
    } else if (question instanceof Question.RemoveZone remove) {
      say(Texts.of("question.removezone", name(remove.zone())));
      begin(offer("question.removezone.no", "K", session::back));
      offer("question.removezone.yes", "R", () -> session.answer(remove));
    }
  }

  private void ask(Question.RemoveEntry remove) {
    String name = session.map().nameOf(remove.subject());
    say(Texts.of("question.removeentry", name, remove.places(), remove.joins(), remove.readings()));
    offer("question.removezone.no", "K", session::back).requestFocusInWindow();
    offer("question.removezone.yes", "R", () -> session.answer(remove));
  }

  /** A question whose answer is typed. */
  private void typed(String name, String asked, int columns, Consumer<String> answer) {
    say(asked);
    JTextField field = new TypedField(columns);
    field.setName(name);
    field.getAccessibleContext().setAccessibleName(asked);
    field.addActionListener(entered -> answer.accept(field.getText()));
    add(field);
    begin(field);
  }

  private void ask(Question.PinsTaken taken) {
    NetClash clash = taken.clash();
    String on = name(clash.other());
    String pins =
        clash.pins().stream()
            .map(pin -> session.map().nameOf(Subject.of(pin)))
            .collect(Collectors.joining(", "));
    say(
        clash.pins().isEmpty()
            ? Texts.of("question.meet", name(clash.wanted()), on)
            : Texts.of("question.taken", pins, on));
    offerText(
        Texts.of("question.taken.join", name(clash.wanted()), on),
        "J",
        () -> session.answer(taken, NetClash.Choice.JOIN));
    if (!clash.pins().isEmpty()) {
      offer("question.taken.move", "M", () -> session.answer(taken, NetClash.Choice.MOVE));
    }
    // Enter changes nothing: two nets made one by a slip are hard to take apart again
    begin(offer("question.taken.leave", "V", () -> session.answer(taken, NetClash.Choice.LEAVE)));
  }

  private String name(ZoneId zone) {
    return session.map().zones().find(zone).map(session.map()::nameOf).orElse(zone.text());
  }

  private String name(NetId net) {
    return session.map().nameOf(Subject.of(net));
  }

  private void ask(Question.WhichPin which) {
    say(Texts.of("question.whichpin", session.map().nameOf(which.part())));
    JButton begun = null;
    for (PinRef pin : which.pins()) {
      String key = pin.pin().length() == 1 ? pin.pin().toUpperCase(Locale.ROOT) : "";
      JButton button = offerText(pin.pin(), key, () -> session.answer(pin));
      begun = begun == null ? button : begun;
    }
    if (begun != null) {
      begin(begun);
    }
  }

  /** A key for each state; date code and value, if any, are filled in before. */
  private void ask(Question.WhichCondition asked) {
    say(Texts.of("question.condition", session.map().nameOf(asked.part())));
    JTextField dateCode = new TypedField(6);
    JTextField fitted = new TypedField(8);
    JTextField note = new TypedField(14);
    JButton begun = null;
    int key = 0;
    for (State state : State.values()) {
      if (state != State.UNKNOWN) {
        key++;
        JButton button =
            offer(
                "state." + Texts.word(state),
                Integer.toString(key),
                () ->
                    session.answer(
                        asked,
                        state,
                        fitted.getText().strip(),
                        dateCode.getText().strip(),
                        note.getText().strip()));
        begun = begun == null ? button : begun;
      }
    }
    filled("question.condition.date", dateCode);
    filled("question.condition.fitted", fitted);
    filled("question.condition.note", note);
    if (begun != null) {
      begin(begun);
    }
  }

  private void filled(String key, JTextField field) {
    JLabel label = new JLabel(Texts.of(key));
    label.setLabelFor(field);
    field.setName(key);
    add(label);
    add(field);
  }

  /** A key for each kind; the one it has now is ready to be taken, so that a note is Enter. */
  private void askKind(
      String noted, HazardZone.Kind now, BiConsumer<HazardZone.Kind, String> answer) {
    TypedField note = new TypedField(18);
    note.setText(noted);
    note.setName("hazard-note");
    note.addActionListener(entered -> answer.accept(now, note.getText().strip()));
    int key = 0;
    for (HazardZone.Kind kind : HazardZone.Kind.values()) {
      key++;
      JButton button =
          offer(
              "hazard." + Texts.word(kind),
              Integer.toString(key),
              () -> answer.accept(kind, note.getText().strip()));
      if (kind == now) {
        begin(button);
      }
    }
    JLabel label = new JLabel(Texts.of("question.hazard.note"));
    label.setLabelFor(note);
    add(label);
    add(note);
  }

  private void say(String text) {
    JLabel label = new JLabel(text);
    label.putClientProperty("FlatLaf.styleClass", "h4");
    add(label);
    getAccessibleContext().setAccessibleName(text);
  }

  private JButton offer(String key, String letter, Runnable answer) {
    return offerText(Texts.of(key), letter, answer);
  }

  private JButton offerText(String text, String key, Runnable answer) {
    JButton button = new JButton(key.isEmpty() || key.equals(text) ? text : text + "  " + key);
    button.getAccessibleContext().setAccessibleName(text);
    button.addActionListener(pressed -> answer.run());
    bind(button, "ENTER", answer, WHEN_FOCUSED);
    if (!key.isEmpty() && stroke(key) != null) {
      bind(this, key, answer, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
      boundKeys.add(key);
    }
    add(button);
    return button;
  }

  private static void bind(JComponent on, String key, Runnable answer, int condition) {
    on.getInputMap(condition).put(stroke(key), key);
    on.getActionMap()
        .put(
            key,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                answer.run();
              }
            });
  }

  private static KeyStroke stroke(String key) {
    return KeyStroke.getKeyStroke(key);
  }
}
