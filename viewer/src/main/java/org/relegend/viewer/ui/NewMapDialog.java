package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.TextListener;

/** Asks for the title of a new map and the folder it is made in. */
final class NewMapDialog {
  /** What was answered. */
  record Asked(String title, Path folder) {}

  private final Path parent;
  private final JTextField title = new JTextField(28);
  private final JTextField folder = new JTextField(28);

  private NewMapDialog(Path parent) {
    this.parent = parent;
    title.setName("title");
    folder.setName("folder");
    title
        .getDocument()
        .addDocumentListener(
            new TextListener(() -> folder.setText(parent.resolve(folderName()).toString())));
  }

  /** The title as a folder's name that every system takes. */
  private String folderName() {
    String name = title.getText().strip().replaceAll("[^\\p{L}\\p{N}._-]+", "-");
    return name.isEmpty() ? "map" : name;
  }

  /**
   * Nothing, where it was cancelled.
   *
   * @param title to begin with
   */
  static Optional<Asked> ask(Component over, Path parent, String title) {
    NewMapDialog dialog = new NewMapDialog(parent);
    dialog.title.setText(title);
    return dialog.ask(over);
  }

  private Optional<Asked> ask(Component over) {
    JPanel form = new JPanel(new GridBagLayout());
    put(form, new JLabel(Messages.of("new.name")), 0, 0);
    put(form, title, 1, 0);
    put(form, new JLabel(Messages.of("new.folder")), 0, 1);
    JPanel where = new JPanel(new BorderLayout(6, 0));
    where.add(folder);
    JButton choose = new JButton(Messages.of("new.choose"));
    choose.addActionListener(pressed -> choose(over));
    where.add(choose, BorderLayout.EAST);
    put(form, where, 1, 1);
    Object[] options = {Messages.of("new.create"), Messages.of("dialog.cancel")};
    title.addActionListener(entered -> take(options[0]));
    folder.addActionListener(entered -> take(options[0]));
    int answer =
        JOptionPane.showOptionDialog(
            over,
            form,
            Messages.of("new.title"),
            JOptionPane.OK_CANCEL_OPTION,
            JOptionPane.PLAIN_MESSAGE,
            null,
            options,
            title);
    boolean complete = !title.getText().isBlank() && !folder.getText().isBlank();
    return answer == 0 && complete
        ? Optional.of(new Asked(title.getText().strip(), Path.of(folder.getText().strip())))
        : Optional.empty();
  }

  /** Enter in a line takes the form. */
  private void take(Object option) {
    if (SwingUtilities.getAncestorOfClass(JOptionPane.class, title) instanceof JOptionPane pane) {
      pane.setValue(option);
    }
  }

  private void choose(Component over) {
    JFileChooser chooser = new JFileChooser(parent.toFile());
    chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
    if (chooser.showOpenDialog(over) == JFileChooser.APPROVE_OPTION) {
      folder.setText(chooser.getSelectedFile().toPath().resolve(folderName()).toString());
    }
  }

  private static void put(JPanel form, Component what, int x, int y) {
    GridBagConstraints place = new GridBagConstraints();
    place.gridx = x;
    place.gridy = y;
    place.anchor = GridBagConstraints.LINE_START;
    place.fill = GridBagConstraints.HORIZONTAL;
    place.insets = new Insets(4, 4, 4, 8);
    form.add(what, place);
  }
}
