package org.relegend.viewer.control;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import org.relegend.viewer.session.Question;
import org.relegend.viewer.session.Session;

/** A question that waits for an answer, with a button and a key for each. */
public final class QuestionBar extends JPanel {
  private static final int ROW_GAP = 4;

  private final Session session;
  private final List<String> boundKeys = new ArrayList<>();
  private final List<QuestionForm> forms = new ArrayList<>();
  private @Nullable Component returnTo;
  private @Nullable Component first;

  public QuestionBar(Session session) {
    super(new FlowLayout(FlowLayout.LEADING, 8, ROW_GAP));
    this.session = session;
    setName("question");
  }

  /** Who puts the questions of one room. */
  public void add(QuestionForm form) {
    forms.add(form);
  }

  /** Shows the question that is open, or nothing; then the keyboard is back where it was. */
  public void refresh() {
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
  public void takeFocus() {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    if (first != null && (owner == null || !isAncestorOf(owner))) {
      first.requestFocusInWindow();
    }
  }

  /** What has the keyboard when the question comes up. */
  public void begin(Component answer) {
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
    for (QuestionForm form : forms) {
      if (form.ask(question, this)) {
        return;
      }
    }
    throw new IllegalArgumentException("nobody puts " + question);
  }

  /** A question whose answer is typed. */
  public void typed(String name, String asked, int columns, Consumer<String> answer) {
    say(asked);
    JTextField field = new TypedField(columns);
    field.setName(name);
    field.getAccessibleContext().setAccessibleName(asked);
    field.addActionListener(entered -> answer.accept(field.getText()));
    add(field);
    begin(field);
  }

  /** A field with its label; its name is the label's key. */
  public void labelled(String key, JTextField field) {
    JLabel label = new JLabel(Messages.of(key));
    label.setLabelFor(field);
    field.setName(key);
    add(label);
    add(field);
  }

  /** What is asked. */
  public void say(String text) {
    JLabel label = new JLabel(text);
    label.putClientProperty("FlatLaf.styleClass", "h4");
    add(label);
    getAccessibleContext().setAccessibleName(text);
  }

  /** A button with a text by its key, and a key for it. */
  public JButton offer(String key, String letter, Runnable answer) {
    return offerText(Messages.of(key), letter, answer);
  }

  /** A button with this text, and a key for it, if not empty. */
  public JButton offerText(String text, String key, Runnable answer) {
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
