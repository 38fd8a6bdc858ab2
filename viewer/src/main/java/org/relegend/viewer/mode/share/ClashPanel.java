package org.relegend.viewer.mode.share;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Optional;
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
import org.relegend.map.BoardMap;
import org.relegend.map.Clash;
import org.relegend.map.EditRefusedException;
import org.relegend.share.ClashDecisions;
import org.relegend.share.ClashText;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.session.Session;

/** What two people said differently, both versions side by side; each decision is an edit. */
public final class ClashPanel extends JPanel {
  private final Session session;
  private final DefaultListModel<Clash> clashes = new DefaultListModel<>();
  private final JList<Clash> list = new JList<>(clashes);
  private final JLabel heading = new JLabel();
  private final JButton mine = new JButton(Messages.of("clashes.mine"));
  private final JButton theirs = new JButton(Messages.of("clashes.theirs"));

  public ClashPanel(Session session, Runnable back) {
    super(new BorderLayout(0, 4));
    this.session = session;
    setName("clashes-area");
    setBorder(BorderFactory.createEmptyBorder(6, 10, 4, 10));
    heading.putClientProperty("FlatLaf.styleClass", "h2");
    JButton close = new JButton(Messages.of("findings.back"));
    close.addActionListener(pressed -> back.run());
    mine.addActionListener(pressed -> decide(ClashDecisions.Side.MINE));
    theirs.addActionListener(pressed -> decide(ClashDecisions.Side.THEIRS));
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING, 8, 0));
    List.of(mine, theirs, close).forEach(buttons::add);
    JPanel head = new JPanel(new BorderLayout());
    head.add(heading, BorderLayout.CENTER);
    head.add(buttons, BorderLayout.EAST);
    add(head, BorderLayout.NORTH);
    list.setName("clashes");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(
        (JList<? extends Clash> of, Clash clash, int row, boolean chosen, boolean focused) ->
            render(session.map(), clash, chosen));
    list.getAccessibleContext().setAccessibleName(Messages.of("clashes.area"));
    bind("M", ClashDecisions.Side.MINE);
    bind("T", ClashDecisions.Side.THEIRS);
    add(new JScrollPane(list), BorderLayout.CENTER);
    refresh();
  }

  private void bind(String key, ClashDecisions.Side side) {
    list.getInputMap().put(KeyStroke.getKeyStroke(key), key);
    list.getActionMap()
        .put(
            key,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                decide(side);
              }
            });
  }

  private void decide(ClashDecisions.Side side) {
    Optional<Clash> chosen = Optional.ofNullable(list.getSelectedValue());
    if (chosen.isEmpty()) {
      return;
    }
    try {
      session.document().apply(ClashDecisions.edit(session.map(), chosen.get(), side));
    } catch (EditRefusedException unreadable) {
      heading.setText(String.valueOf(unreadable.getMessage()));
    }
  }

  /** Shows what is undecided in the map as it is now. */
  public void refresh() {
    List<Clash> now = List.copyOf(session.map().clashes());
    heading.setText(Messages.of("clashes.heading", now.size()));
    int kept = list.getSelectedIndex();
    clashes.clear();
    clashes.addAll(now);
    list.setSelectedIndex(Math.max(0, Math.min(now.size() - 1, kept)));
    mine.setEnabled(!now.isEmpty());
    theirs.setEnabled(!now.isEmpty());
  }

  public void takeFocus() {
    list.requestFocusInWindow();
  }

  private static Component render(BoardMap map, Clash clash, boolean chosen) {
    JPanel row = new JPanel(new BorderLayout(12, 0));
    row.setBorder(BorderFactory.createEmptyBorder(5, 8, 5, 8));
    JLabel about = new JLabel(ClashText.about(map, clash));
    about.putClientProperty("FlatLaf.styleClass", "h4");
    JLabel ours = new JLabel(text(map, clash, ClashDecisions.Side.MINE));
    JLabel others = new JLabel(text(map, clash, ClashDecisions.Side.THEIRS));
    JPanel versions = new JPanel(new BorderLayout());
    versions.setOpaque(false);
    versions.add(ours, BorderLayout.NORTH);
    versions.add(others, BorderLayout.SOUTH);
    row.add(about, BorderLayout.NORTH);
    row.add(versions, BorderLayout.CENTER);
    row.setBackground(UIManager.getColor(chosen ? "List.selectionBackground" : "List.background"));
    String part = chosen ? "List.selectionForeground" : "List.foreground";
    List.of(about, ours, others).forEach(label -> label.setForeground(UIManager.getColor(part)));
    row.getAccessibleContext()
        .setAccessibleName(about.getText() + ": " + ours.getText() + ", " + others.getText());
    return row;
  }

  private static String text(BoardMap map, Clash clash, ClashDecisions.Side side) {
    String version = ClashText.version(map, clash, side);
    return Messages.of(
        side == ClashDecisions.Side.MINE ? "clashes.row.mine" : "clashes.row.theirs", version);
  }
}
