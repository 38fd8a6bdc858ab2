package org.relegend.viewer.control;

import java.awt.BorderLayout;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;

/** A list in the place of the node strip: a sign, a line and more words in each row. */
public final class RowListPanel extends JPanel {
  /**
   * One row.
   *
   * @param sign a word or figure in front
   * @param line what it is about
   * @param more the rest, in smaller letters
   * @param go where Enter leads
   */
  public record Row(String sign, String line, String more, Runnable go) {}

  private final WrappedRows<Row> list;
  private final JLabel heading = new JLabel();
  private final JLabel hint = new JLabel();
  private boolean settling;

  /**
   * @param name for tests and accessibility, as the text key "list.NAME"
   * @param back shows the node strip again
   */
  public RowListPanel(String name, Runnable back) {
    super(new BorderLayout(0, 4));
    list =
        new WrappedRows<>(name, row -> new WrappedRows.Words(row.sign(), row.line(), row.more()));
    setName(name + "-area");
    setBorder(BorderFactory.createEmptyBorder(6, 10, 4, 10));
    heading.putClientProperty("FlatLaf.styleClass", "h2");
    JPanel head = new JPanel(new BorderLayout(12, 0));
    head.add(heading, BorderLayout.WEST);
    head.add(hint, BorderLayout.CENTER);
    JButton close = new JButton(Messages.of("findings.back"));
    close.addActionListener(pressed -> back.run());
    head.add(close, BorderLayout.EAST);
    add(head, BorderLayout.NORTH);
    list.getAccessibleContext().setAccessibleName(Messages.of("list." + name));
    list.onOpen(row -> row.go().run());
    list.onKey("ESCAPE", row -> back.run());
    add(new JScrollPane(list), BorderLayout.CENTER);
  }

  /** Binds a key to the chosen row. */
  public void onKey(String key, Consumer<Row> deed) {
    list.onKey(key, deed);
  }

  /** Number of the chosen row, from 0; below 0 where none is. */
  public int chosen() {
    return list.getSelectedIndex();
  }

  /** Calls back with the number of the row that the technician chose. */
  public void onChoose(IntConsumer listener) {
    list.addListSelectionListener(
        event -> {
          if (!settling && list.getSelectedIndex() >= 0) {
            listener.accept(list.getSelectedIndex());
          }
        });
  }

  /** Chooses a row; nobody is told. */
  public void choose(int row) {
    settling = true;
    list.setSelectedIndex(row);
    list.ensureIndexIsVisible(row);
    settling = false;
  }

  public void show(String title, String beside, List<Row> shown) {
    heading.setText(title);
    hint.setText(beside);
    hint.setToolTipText(beside);
    settling = true;
    list.show(shown);
    settling = false;
  }

  public void takeFocus() {
    list.requestFocusInWindow();
  }
}
