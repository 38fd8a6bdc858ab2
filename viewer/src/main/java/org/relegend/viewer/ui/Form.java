package org.relegend.viewer.ui;

import java.awt.Component;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTextField;

/** A few lines to fill in, or to choose from; Enter takes them, Escape drops them. */
final class Form {
  private final String name;
  private final JPanel panel = new JPanel(new GridBagLayout());
  private final Map<String, JComponent> fields = new LinkedHashMap<>();

  /**
   * @param name of the dialog; its texts have keys that begin so
   */
  Form(String name) {
    this.name = name;
  }

  Form line(String field, String value) {
    JTextField text = new JTextField(value, 34);
    text.selectAll();
    return put(field, text);
  }

  Form choice(String field, List<String> words, String chosen) {
    JComboBox<String> box = new JComboBox<>(words.toArray(String[]::new));
    box.setSelectedItem(chosen);
    return put(field, box);
  }

  private Form put(String field, JComponent component) {
    component.setName(name + "." + field);
    JLabel label = new JLabel(Texts.of(name + "." + field));
    label.setLabelFor(component);
    GridBagConstraints place = new GridBagConstraints();
    place.gridy = fields.size();
    place.anchor = GridBagConstraints.LINE_START;
    place.fill = GridBagConstraints.HORIZONTAL;
    place.insets = new Insets(4, 4, 4, 8);
    panel.add(label, place);
    place.gridx = 1;
    place.weightx = 1;
    panel.add(component, place);
    fields.put(field, component);
    return this;
  }

  /** What was filled in, by field; nothing where it was dropped. */
  Optional<Map<String, String>> ask(Component over) {
    Object[] options = {Texts.of("dialog.ok"), Texts.of("dialog.cancel")};
    JComponent first = fields.values().iterator().next();
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
            first.requestFocusInWindow();
          }
        };
    JDialog dialog = pane.createDialog(over, Texts.of(name + ".title"));
    dialog.setName(name);
    dialog.setVisible(true);
    dialog.dispose();
    if (!options[0].equals(pane.getValue())) {
      return Optional.empty();
    }
    Map<String, String> filled = new LinkedHashMap<>();
    fields.forEach((field, component) -> filled.put(field, text(component)));
    return Optional.of(filled);
  }

  private static String text(JComponent component) {
    return component instanceof JTextField field
        ? field.getText().strip()
        : String.valueOf(((JComboBox<?>) component).getSelectedItem());
  }
}
