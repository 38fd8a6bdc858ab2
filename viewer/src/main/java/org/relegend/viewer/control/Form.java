package org.relegend.viewer.control;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.UIManager;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;
import org.relegend.viewer.paint.Palette;

/** A few lines to fill in, or to choose from; Enter takes them, Escape drops them. */
public final class Form {
  /**
   * What is to be said of the lines as they are filled in.
   *
   * @param fault whether they can't be taken so
   * @param doubt whether they are taken only when asked for twice
   */
  public record Validity(String text, boolean fault, boolean doubt) {}

  /** Of a choice, in component pixels; its list shows the words whole. */
  private static final int WIDEST = 560;

  private final String name;
  private final JPanel panel = new JPanel(new GridBagLayout());
  private final Map<String, JComponent> fields = new LinkedHashMap<>();
  private final JTextArea message = new JTextArea(3, 34);
  private @Nullable Function<Map<String, String>, Validity> look;
  private Map<String, String> doubted = Map.of();
  private String first = "";

  /**
   * @param name of the dialog; its texts have keys that begin so
   */
  public Form(String name) {
    this.name = name;
  }

  public Form line(String field, String value) {
    JTextField text = new TypedField(34);
    text.setText(value);
    text.selectAll();
    return put(field, text);
  }

  public Form choice(String field, List<String> words, String chosen) {
    JComboBox<String> box = new JComboBox<>(words.toArray(String[]::new));
    box.setSelectedItem(chosen);
    Dimension wide = box.getPreferredSize();
    box.setPreferredSize(new Dimension(Math.min(WIDEST, wide.width), wide.height));
    return put(field, box);
  }

  /** A line that is typed or chosen; a word of the list is completed. */
  public Form words(String field, List<String> words, String chosen) {
    CompletionBox box = new CompletionBox(words, chosen);
    box.field().setName(name + "." + field + ".text");
    return put(field, box);
  }

  /** Several lines of text. */
  public Form lines(String field, String value) {
    JTextArea area = new JTextArea(value, 3, 34);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
    area.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    return put(field, area);
  }

  /** The keyboard begins in this line, not in the first. */
  public Form begin(String field) {
    first = field;
    return this;
  }

  /** Looks at what is filled in with each change, says what there is to say, and may refuse it. */
  public Form looking(Function<Map<String, String>, Validity> verdict) {
    look = verdict;
    return this;
  }

  private Form put(String field, JComponent component) {
    component.setName(name + "." + field);
    JLabel label = new JLabel(Messages.of(name + "." + field));
    label.setLabelFor(component);
    GridBagConstraints place = new GridBagConstraints();
    place.gridy = fields.size();
    place.anchor = GridBagConstraints.LINE_START;
    place.fill = GridBagConstraints.HORIZONTAL;
    place.insets = new Insets(4, 4, 4, 8);
    panel.add(label, place);
    place.gridx = 1;
    place.weightx = 1;
    panel.add(component instanceof JTextArea ? new JScrollPane(component) : component, place);
    fields.put(field, component);
    return this;
  }

  /** The first line to be typed in, if there is one. */
  private JComponent firstLine() {
    return fields.values().stream()
        .filter(JTextField.class::isInstance)
        .findFirst()
        .orElseGet(() -> fields.values().iterator().next());
  }

  /** What was filled in, by field; nothing where it was dropped. */
  public Optional<Map<String, String>> ask(Component over) {
    Object[] options = {Messages.of("dialog.ok"), Messages.of("dialog.cancel")};
    JComponent begin = fields.getOrDefault(first, firstLine());
    watch();
    JOptionPane pane =
        new JOptionPane(
            panel,
            JOptionPane.PLAIN_MESSAGE,
            JOptionPane.OK_CANCEL_OPTION,
            null,
            options,
            options[0]) {
          /** The keyboard begins in the first line; Enter takes the form from anywhere. */
          @Override
          public void selectInitialValue() {
            super.selectInitialValue();
            begin.requestFocusInWindow();
          }

          @Override
          public void setValue(Object value) {
            if (!options[0].equals(value) || fits()) {
              super.setValue(value);
            }
          }
        };
    JDialog dialog = pane.createDialog(over, Messages.of(name + ".title"));
    dialog.setName(name);
    dialog.setVisible(true);
    dialog.dispose();
    if (!options[0].equals(pane.getValue())) {
      return Optional.empty();
    }
    return Optional.of(filled());
  }

  private Map<String, String> filled() {
    Map<String, String> filled = new LinkedHashMap<>();
    fields.forEach((field, component) -> filled.put(field, text(component)));
    return filled;
  }

  private void watch() {
    if (look == null) {
      return;
    }
    message.setName(name + ".said");
    message.setEditable(false);
    message.setFocusable(false);
    message.setOpaque(false);
    message.setLineWrap(true);
    message.setWrapStyleWord(true);
    GridBagConstraints place = new GridBagConstraints();
    place.gridy = fields.size();
    place.gridx = 1;
    place.fill = GridBagConstraints.HORIZONTAL;
    place.insets = new Insets(4, 6, 4, 8);
    panel.add(message, place);
    for (JComponent component : fields.values()) {
      JComponent typed = component instanceof CompletionBox box ? box.field() : component;
      if (typed instanceof JTextComponent text) {
        text.getDocument().addDocumentListener(new TextListener(this::say));
      } else if (component instanceof JComboBox<?> box) {
        box.addActionListener(chosen -> say());
      }
    }
    say();
  }

  private void say() {
    if (look != null) {
      say(look.apply(filled()), "");
    }
  }

  private void say(Validity verdict, String more) {
    boolean refused = verdict.fault() || verdict.doubt();
    String text = verdict.text() + more;
    message.setText(refused ? "\u2717 " + text : text);
    message.setOpaque(refused);
    message.setBackground(refused ? Palette.YELLOW : null);
    message.setForeground(refused ? Palette.BLACK : UIManager.getColor("Label.foreground"));
    message.getAccessibleContext().setAccessibleDescription(text);
  }

  /** Whether what is filled in can be taken; what is doubted can, when asked for again. */
  private boolean fits() {
    if (look == null) {
      return true;
    }
    Map<String, String> now = filled();
    Validity verdict = look.apply(now);
    if (verdict.fault() || verdict.doubt() && !now.equals(doubted)) {
      doubted = now;
      say(verdict, verdict.fault() ? "" : " " + Messages.of("form.again"));
      return false;
    }
    return true;
  }

  private static String text(JComponent component) {
    if (component instanceof CompletionBox box) {
      return box.text();
    }
    return component instanceof JTextComponent field
        ? field.getText().strip()
        : String.valueOf(((JComboBox<?>) component).getSelectedItem());
  }
}
