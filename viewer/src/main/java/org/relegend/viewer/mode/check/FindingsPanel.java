package org.relegend.viewer.mode.check;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.WrappedRows;

/** What the checks found, the graver ones first; choosing one leads to its place. */
public final class FindingsPanel extends JPanel {
  private final WrappedRows<Finding> list = new WrappedRows<>("findings", FindingsPanel::words);
  private final JLabel heading = new JLabel();
  private final JButton mend = new JButton(Messages.of("findings.mend"));

  /**
   * @param go leads to a finding's place
   * @param put puts a finding right, where one edit does
   * @param back shows the node strip again
   */
  public FindingsPanel(Consumer<Finding> go, Consumer<Finding> put, Runnable back) {
    super(new BorderLayout(0, 4));
    setName("findings-area");
    setBorder(BorderFactory.createEmptyBorder(6, 10, 4, 10));
    heading.putClientProperty("FlatLaf.styleClass", "h2");
    JPanel head = new JPanel(new BorderLayout());
    head.add(heading, BorderLayout.CENTER);
    JButton close = new JButton(Messages.of("findings.back"));
    close.addActionListener(pressed -> back.run());
    mend.setName("mend");
    mend.addActionListener(pressed -> list.chosen().ifPresent(put));
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING, 8, 0));
    buttons.add(mend);
    buttons.add(close);
    head.add(buttons, BorderLayout.EAST);
    add(head, BorderLayout.NORTH);
    list.getAccessibleContext().setAccessibleName(Messages.of("findings.area"));
    list.onOpen(go);
    list.onKey("M", put);
    list.addListSelectionListener(chosen -> refresh());
    add(new JScrollPane(list), BorderLayout.CENTER);
  }

  private void refresh() {
    mend.setEnabled(list.chosen().filter(FindingFix::isOffered).isPresent());
  }

  /** Says that the checks run. */
  public void showChecking() {
    heading.setText(Messages.of("findings.checking"));
  }

  public void show(List<Finding> found) {
    heading.setText(
        found.isEmpty()
            ? Messages.of("findings.none")
            : Messages.of("status.findings", found.size()));
    list.show(found);
    refresh();
  }

  public void takeFocus() {
    list.requestFocusInWindow();
  }

  private static WrappedRows.Words words(Finding finding) {
    String sign = sign(finding.severity()) + "  " + word(finding.severity());
    return new WrappedRows.Words(sign, finding.message(), finding.remedy());
  }

  private static String word(Severity severity) {
    return Messages.of("severity." + Messages.word(severity));
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
