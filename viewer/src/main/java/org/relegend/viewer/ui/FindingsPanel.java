package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
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
import org.relegend.check.Finding;
import org.relegend.check.Severity;
import org.relegend.viewer.session.Mending;

/** What the checks found, the graver ones first; choosing one leads to its place. */
final class FindingsPanel extends JPanel {
  private static final int GRAVE = 110;

  /** Screen pixels that a px of Swing's style sheets is long. */
  private static final double SWING_PIXEL = 1.3;

  private final DefaultListModel<Finding> findings = new DefaultListModel<>();
  private final JList<Finding> list =
      new JList<>(findings) {
        @Override
        public boolean getScrollableTracksViewportWidth() {
          return true; // long findings go on in the next line
        }
      };
  private final JLabel heading = new JLabel();
  private final JButton mend = new JButton(Texts.of("findings.mend"));
  private final Consumer<Finding> go;
  private final Consumer<Finding> put;

  /**
   * @param go leads to a finding's place
   * @param put puts a finding right, where one edit does
   * @param back shows the node strip again
   */
  FindingsPanel(Consumer<Finding> go, Consumer<Finding> put, Runnable back) {
    super(new BorderLayout(0, 4));
    this.go = go;
    this.put = put;
    setName("findings-area");
    setBorder(BorderFactory.createEmptyBorder(6, 10, 4, 10));
    heading.putClientProperty("FlatLaf.styleClass", "h2");
    JPanel head = new JPanel(new BorderLayout());
    head.add(heading, BorderLayout.CENTER);
    JButton close = new JButton(Texts.of("findings.back"));
    close.addActionListener(pressed -> back.run());
    mend.setName("mend");
    mend.addActionListener(pressed -> putRight());
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING, 8, 0));
    buttons.add(mend);
    buttons.add(close);
    head.add(buttons, BorderLayout.EAST);
    add(head, BorderLayout.NORTH);
    list.setName("findings");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(
        (JList<? extends Finding> of, Finding finding, int row, boolean chosen, boolean focused) ->
            render(finding, chosen, list.getWidth() - GRAVE - 60));
    list.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            list.setFixedCellHeight(1); // forgets how high the rows were
            list.setFixedCellHeight(-1);
          }
        });
    list.getAccessibleContext().setAccessibleName(Texts.of("findings.area"));
    bind("ENTER", this::goToChosen);
    bind("M", this::putRight);
    list.addListSelectionListener(chosen -> settle());
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent event) {
            goToChosen();
          }
        });
    add(new JScrollPane(list), BorderLayout.CENTER);
  }

  private void bind(String key, Runnable deed) {
    list.getInputMap().put(KeyStroke.getKeyStroke(key), key);
    list.getActionMap()
        .put(
            key,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                deed.run();
              }
            });
  }

  private Optional<Finding> chosen() {
    return Optional.ofNullable(list.getSelectedValue());
  }

  private void goToChosen() {
    chosen().ifPresent(go);
  }

  private void putRight() {
    chosen().ifPresent(put);
  }

  private void settle() {
    mend.setEnabled(chosen().filter(Mending::isOffered).isPresent());
  }

  /** Says that the checks run. */
  void showChecking() {
    heading.setText(Texts.of("findings.checking"));
  }

  void show(List<Finding> found) {
    heading.setText(
        found.isEmpty() ? Texts.of("findings.none") : Texts.of("status.findings", found.size()));
    int kept = list.getSelectedIndex();
    findings.clear();
    findings.addAll(found);
    list.setSelectedIndex(Math.max(0, Math.min(found.size() - 1, kept)));
    settle();
  }

  void takeFocus() {
    list.requestFocusInWindow();
  }

  private static String wrapped(String text, int width) {
    return "<html><body style='width:%dpx'>%s"
        .formatted(
            (int) (Math.max(260, width) / SWING_PIXEL),
            text.replace("&", "&amp;").replace("<", "&lt;"));
  }

  private static Component render(Finding finding, boolean chosen, int width) {
    JPanel row = new JPanel(new BorderLayout(12, 0));
    row.setBorder(BorderFactory.createEmptyBorder(5, 8, 5, 8));
    JLabel grave = new JLabel(sign(finding.severity()) + "  " + word(finding.severity()));
    grave.setPreferredSize(new java.awt.Dimension(GRAVE, grave.getPreferredSize().height));
    JLabel message = new JLabel(wrapped(finding.message(), width));
    JLabel remedy = new JLabel(wrapped(finding.remedy(), width));
    remedy.putClientProperty("FlatLaf.styleClass", "medium");
    JPanel words = new JPanel(new BorderLayout());
    words.setOpaque(false);
    words.add(message, BorderLayout.NORTH);
    words.add(remedy, BorderLayout.SOUTH);
    row.add(grave, BorderLayout.WEST);
    row.add(words, BorderLayout.CENTER);
    String part = chosen ? "selectionForeground" : "foreground";
    row.setBackground(UIManager.getColor(chosen ? "List.selectionBackground" : "List.background"));
    List.of(grave, message, remedy)
        .forEach(label -> label.setForeground(UIManager.getColor("List." + part)));
    row.getAccessibleContext()
        .setAccessibleName(
            word(finding.severity()) + ": " + finding.message() + " " + finding.remedy());
    return row;
  }

  private static String word(Severity severity) {
    return Texts.of("severity." + Texts.word(severity));
  }

  /** A shape for each, so that colour isn't needed. */
  private static String sign(Severity severity) {
    return switch (severity) {
      case ERROR -> "\u2716";
      case WARNING -> "\u25b2";
      case INFORMATION -> "\u2022";
    };
  }
}
