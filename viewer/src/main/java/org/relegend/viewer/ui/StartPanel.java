package org.relegend.viewer.ui;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.relegend.viewer.control.Actions;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.UserAction;

/** What the window shows while no map is open: what to do next. */
final class StartPanel extends JPanel {
  private final Actions acts;
  private final Consumer<Path> open;
  private final JPanel column = new JPanel(new GridBagLayout());

  StartPanel(Actions acts, Consumer<Path> open) {
    super(new GridBagLayout());
    this.acts = acts;
    this.open = open;
    add(column);
    getAccessibleContext().setAccessibleName(Messages.of("start.title"));
  }

  /**
   * Lays it out anew.
   *
   * @param hasDemo whether the demo can be opened from here
   */
  void refresh(List<Path> recent, boolean hasDemo) {
    column.removeAll();
    JLabel title = new JLabel(Messages.of("start.title"));
    title.putClientProperty("FlatLaf.styleClass", "h0");
    put(title, 4);
    put(new JLabel(Messages.of("start.text")), 24);
    if (hasDemo) {
      put(wide(new JButton(acts.action(UserAction.DEMO))), 6);
    } else {
      put(new JLabel(Messages.of("start.demo.missing")), 12);
    }
    put(wide(new JButton(acts.action(UserAction.NEW))), 6);
    put(wide(new JButton(acts.action(UserAction.OPEN))), 28);
    if (!recent.isEmpty()) {
      JLabel heading = new JLabel(Messages.of("start.recent"));
      heading.putClientProperty("FlatLaf.styleClass", "h4");
      put(heading, 4);
      recent.forEach(folder -> put(link(folder), 2));
    }
    put(new JLabel(Messages.of("app.notice")), 0, 36);
    revalidate();
    repaint();
  }

  private JComponent link(Path folder) {
    JButton link = new JButton("%s    %s".formatted(folder.getFileName(), folder.getParent()));
    link.setHorizontalAlignment(JButton.LEADING);
    link.putClientProperty("JButton.buttonType", "borderless");
    link.addActionListener(pressed -> open.accept(folder));
    return link;
  }

  private static JButton wide(JButton button) {
    button.setFont(button.getFont().deriveFont(Font.PLAIN, button.getFont().getSize2D() + 2));
    button.setPreferredSize(new Dimension(300, button.getPreferredSize().height + 10));
    return button;
  }

  private void put(Component what, int below) {
    put(what, below, 0);
  }

  private void put(Component what, int below, int above) {
    GridBagConstraints place = new GridBagConstraints();
    place.gridx = 0;
    place.anchor = GridBagConstraints.LINE_START;
    place.insets = new Insets(above, 0, below, 0);
    column.add(what, place);
  }
}
