package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import org.relegend.viewer.control.KeyText;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.UserAction;

/** All keys on one sheet, made from the list of acts. */
final class ShortcutSheet extends JDialog {
  private static final int COLUMNS = 3;

  private record Row(String key, String text) {}

  private ShortcutSheet(Window owner) {
    super(owner, Messages.of("keys.title"), ModalityType.MODELESS);
    setName("shortcuts");
    JPanel sheet = new JPanel();
    sheet.setLayout(new BoxLayout(sheet, BoxLayout.X_AXIS));
    sheet.setBorder(BorderFactory.createEmptyBorder(20, 28, 4, 8));
    for (List<JComponent> column : columns()) {
      JComponent stack = stack(column);
      stack.setAlignmentY(TOP_ALIGNMENT);
      sheet.add(stack);
      sheet.add(Box.createHorizontalStrut(24));
    }
    JButton close = new JButton(Messages.of("keys.close"));
    close.addActionListener(pressed -> dispose());
    JPanel foot = new JPanel(new FlowLayout(FlowLayout.TRAILING, 16, 10));
    foot.add(close);
    JScrollPane scroll = new JScrollPane(sheet);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.getVerticalScrollBar().setUnitIncrement(20);
    add(scroll, BorderLayout.CENTER);
    add(foot, BorderLayout.SOUTH);
    getRootPane().setDefaultButton(close);
    getRootPane()
        .registerKeyboardAction(
            pressed -> dispose(),
            KeyStroke.getKeyStroke("ESCAPE"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    setDefaultCloseOperation(DISPOSE_ON_CLOSE);
    pack();
    Rectangle room = getGraphicsConfiguration().getBounds();
    setSize(Math.min(getWidth(), room.width - 40), Math.min(getHeight(), room.height - 80));
    setLocationRelativeTo(owner);
  }

  static void show(Window owner) {
    new ShortcutSheet(owner).setVisible(true);
  }

  /** The groups, spread so that the columns are about as long as each other. */
  private static List<List<JComponent>> columns() {
    List<List<JComponent>> columns = new ArrayList<>();
    List<Integer> lengths = new ArrayList<>();
    for (int i = 0; i < COLUMNS; i++) {
      columns.add(new ArrayList<>());
      lengths.add(0);
    }
    for (UserAction.Group group : UserAction.Group.values()) {
      List<Row> rows = rows(group);
      if (!rows.isEmpty()) {
        put(columns, lengths, titleOf(group), rows);
      }
    }
    put(columns, lengths, Messages.of("keys.typing"), rows("typing", "command", "again", "out"));
    put(
        columns,
        lengths,
        Messages.of("keys.mouse"),
        rows("mouse", "wheel", "drag", "band", "more", "pan", "middle"));
    return columns;
  }

  private static void put(
      List<List<JComponent>> columns, List<Integer> lengths, String title, List<Row> rows) {
    int shortest = 0;
    for (int i = 1; i < COLUMNS; i++) {
      shortest = lengths.get(i) < lengths.get(shortest) ? i : shortest;
    }
    columns.get(shortest).add(block(title, rows));
    lengths.set(shortest, lengths.get(shortest) + rows.size() + 2);
  }

  private static String titleOf(UserAction.Group group) {
    return Messages.of("menu." + group.name().toLowerCase(Locale.ROOT));
  }

  private static List<Row> rows(UserAction.Group group) {
    List<Row> rows = new ArrayList<>();
    for (UserAction act : UserAction.values()) {
      if (act.group() == group) {
        act.key().ifPresent(key -> rows.add(new Row(KeyText.text(key), act.text())));
      }
    }
    return rows;
  }

  private static List<Row> rows(String group, String... rows) {
    String start = "keys." + group + ".";
    return Stream.of(rows)
        .map(row -> new Row(Messages.of(start + row + ".key"), Messages.of(start + row)))
        .toList();
  }

  private static JComponent block(String title, List<Row> rows) {
    JPanel block = new JPanel(new GridBagLayout());
    block.setBorder(BorderFactory.createEmptyBorder(0, 0, 14, 0));
    JLabel heading = new JLabel(title);
    heading.putClientProperty("FlatLaf.styleClass", "h4");
    put(block, heading, 0, 0, 2);
    for (int i = 0; i < rows.size(); i++) {
      JLabel key = new JLabel(rows.get(i).key());
      key.setFont(key.getFont().deriveFont(Font.BOLD));
      put(block, key, 0, i + 1, 1);
      put(block, new JLabel(rows.get(i).text()), 1, i + 1, 1);
    }
    return block;
  }

  private static void put(JPanel block, Component what, int x, int y, int wide) {
    GridBagConstraints place = new GridBagConstraints();
    place.gridx = x;
    place.gridy = y;
    place.gridwidth = wide;
    place.anchor = GridBagConstraints.LINE_START;
    place.insets = new Insets(2, 0, 2, 14);
    block.add(what, place);
  }

  private static JComponent stack(List<JComponent> blocks) {
    JPanel column = new JPanel(new GridBagLayout());
    for (int i = 0; i < blocks.size(); i++) {
      GridBagConstraints place = new GridBagConstraints();
      place.gridx = 0;
      place.gridy = i;
      place.anchor = GridBagConstraints.FIRST_LINE_START;
      place.weighty = i == blocks.size() - 1 ? 1 : 0;
      column.add(blocks.get(i), place);
    }
    return column;
  }
}
