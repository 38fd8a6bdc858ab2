package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;

/** A list in the place of the node strip: a sign, a line and more words in each row. */
final class RowList extends JPanel {
  /**
   * One row.
   *
   * @param sign a word or figure in front
   * @param line what it is about
   * @param more the rest, in smaller letters
   * @param go where Enter leads
   */
  record Row(String sign, String line, String more, Runnable go) {}

  private final DefaultListModel<Row> rows = new DefaultListModel<>();
  private final JList<Row> list = new JList<>(rows);
  private final JLabel heading = new JLabel();
  private final JLabel hint = new JLabel();

  /**
   * @param name for tests and accessibility, as the text key "list.NAME"
   * @param back shows the node strip again
   */
  RowList(String name, Runnable back) {
    super(new BorderLayout(0, 4));
    setName(name + "-area");
    setBorder(BorderFactory.createEmptyBorder(6, 10, 4, 10));
    heading.putClientProperty("FlatLaf.styleClass", "h2");
    JPanel head = new JPanel(new BorderLayout(12, 0));
    head.add(heading, BorderLayout.WEST);
    head.add(hint, BorderLayout.CENTER);
    JButton close = new JButton(Texts.of("findings.back"));
    close.addActionListener(pressed -> back.run());
    head.add(close, BorderLayout.EAST);
    add(head, BorderLayout.NORTH);
    list.setName(name);
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(
        (JList<? extends Row> of, Row row, int index, boolean chosen, boolean focused) ->
            render(row, chosen));
    list.getAccessibleContext().setAccessibleName(Texts.of("list." + name));
    onKey("ENTER", row -> row.go().run());
    onKey("ESCAPE", row -> back.run());
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent event) {
            Row chosen = list.getSelectedValue();
            if (chosen != null) {
              chosen.go().run();
            }
          }
        });
    add(new JScrollPane(list), BorderLayout.CENTER);
  }

  /** Binds a key to the chosen row. */
  void onKey(String key, Consumer<Row> deed) {
    list.getInputMap().put(KeyStroke.getKeyStroke(key), key);
    list.getActionMap()
        .put(
            key,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                Row chosen = list.getSelectedValue();
                if (chosen != null) {
                  deed.accept(chosen);
                }
              }
            });
  }

  /** Number of the chosen row, from 0; below 0 where none is. */
  int chosen() {
    return list.getSelectedIndex();
  }

  void show(String title, String beside, List<Row> shown) {
    heading.setText(title);
    hint.setText(beside);
    hint.setToolTipText(beside);
    int kept = list.getSelectedIndex();
    rows.clear();
    rows.addAll(shown);
    list.setSelectedIndex(Math.max(0, Math.min(shown.size() - 1, kept)));
  }

  void takeFocus() {
    list.requestFocusInWindow();
  }

  private static Component render(Row row, boolean chosen) {
    JPanel panel = new JPanel(new BorderLayout(12, 0));
    panel.setBorder(BorderFactory.createEmptyBorder(5, 8, 5, 8));
    JLabel sign = new JLabel(row.sign());
    sign.putClientProperty("FlatLaf.styleClass", "h4");
    sign.setPreferredSize(new Dimension(130, sign.getPreferredSize().height));
    JLabel line = new JLabel(row.line());
    JLabel more = new JLabel(row.more());
    more.putClientProperty("FlatLaf.styleClass", "medium");
    JPanel words = new JPanel(new BorderLayout());
    words.setOpaque(false);
    words.add(line, BorderLayout.NORTH);
    words.add(more, BorderLayout.SOUTH);
    panel.add(sign, BorderLayout.WEST);
    panel.add(words, BorderLayout.CENTER);
    String part = chosen ? "selectionForeground" : "foreground";
    panel.setBackground(
        UIManager.getColor(chosen ? "List.selectionBackground" : "List.background"));
    List.of(sign, line, more)
        .forEach(label -> label.setForeground(UIManager.getColor("List." + part)));
    panel
        .getAccessibleContext()
        .setAccessibleName(row.sign() + ": " + row.line() + ". " + row.more());
    return panel;
  }
}
