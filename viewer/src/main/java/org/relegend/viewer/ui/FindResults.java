package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JLayeredPane;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import org.relegend.viewer.control.Messages;

/** What was found, in a list under the field; the keyboard stays in the field. */
final class FindResults extends JPanel {
  /**
   * One line of the list.
   *
   * @param name in bold
   * @param detail what it is
   */
  record Line(String name, String detail, Runnable go) {}

  private final JComponent field;
  private final DefaultListModel<Line> lines = new DefaultListModel<>();
  private final JList<Line> list = new JList<>(lines);
  private final JLabel none = new JLabel();

  FindResults(JComponent field) {
    super(new BorderLayout());
    this.field = field;
    setName("results");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setFocusable(false);
    list.setCellRenderer(
        (JList<? extends Line> of, Line line, int index, boolean chosen, boolean focused) ->
            render(line, chosen));
    list.getAccessibleContext().setAccessibleName(Messages.of("find.results"));
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseReleased(MouseEvent event) {
            int index = list.locationToIndex(event.getPoint());
            if (index >= 0) {
              lines.get(index).go().run();
            }
          }
        });
    none.setBorder(BorderFactory.createEmptyBorder(8, 12, 8, 12));
    setBorder(BorderFactory.createLineBorder(UIManager.getColor("Component.focusColor"), 1));
  }

  private static Component render(Line line, boolean chosen) {
    JPanel row = new JPanel(new BorderLayout(12, 0));
    row.setBorder(BorderFactory.createEmptyBorder(4, 12, 4, 12));
    JLabel name = new JLabel(line.name());
    name.putClientProperty("FlatLaf.styleClass", "h4");
    JLabel detail = new JLabel(line.detail());
    row.add(name, BorderLayout.WEST);
    row.add(detail, BorderLayout.CENTER);
    if (chosen) {
      row.setBackground(UIManager.getColor("List.selectionBackground"));
      name.setForeground(UIManager.getColor("List.selectionForeground"));
      detail.setForeground(UIManager.getColor("List.selectionForeground"));
    } else {
      row.setBackground(UIManager.getColor("List.background"));
    }
    row.getAccessibleContext().setAccessibleName(line.name() + ", " + line.detail());
    return row;
  }

  /** Shows these lines, or why there are none; the first one is chosen. */
  void show(List<Line> found, String otherwise) {
    lines.clear();
    found.forEach(lines::addElement);
    removeAll();
    if (found.isEmpty()) {
      none.setText(otherwise);
      add(none);
    } else {
      add(list);
      list.setSelectedIndex(0);
    }
    hangUp();
  }

  private void hangUp() {
    JLayeredPane pane = SwingUtilities.getRootPane(field).getLayeredPane();
    if (getParent() != pane) {
      pane.add(this, JLayeredPane.POPUP_LAYER);
    }
    Point at = SwingUtilities.convertPoint(field, 0, field.getHeight() + 2, pane);
    Dimension size = getPreferredSize();
    setBounds(at.x, at.y, Math.max(size.width, field.getWidth()), size.height);
    setVisible(true);
    revalidate();
    repaint();
  }

  void close() {
    setVisible(false);
    lines.clear();
  }

  boolean isOpen() {
    return isVisible() && getParent() != null;
  }

  /** Chooses the line that is so many further down, within the list. */
  void step(int by) {
    int last = lines.size() - 1;
    if (last >= 0) {
      list.setSelectedIndex(Math.max(0, Math.min(last, list.getSelectedIndex() + by)));
      list.ensureIndexIsVisible(list.getSelectedIndex());
    }
  }

  /** The line chosen. */
  Optional<Line> chosen() {
    return isOpen() ? Optional.ofNullable(list.getSelectedValue()) : Optional.empty();
  }
}
