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
import org.relegend.check.Finding;
import org.relegend.check.Severity;
import org.relegend.viewer.control.Rows;
import org.relegend.viewer.control.Texts;

/** What the checks found, the graver ones first; choosing one leads to its place. */
public final class FindingsPanel extends JPanel {
  private final Rows<Finding> list = new Rows<>("findings", FindingsPanel::words);
  private final JLabel heading = new JLabel();
  private final JButton mend = new JButton(Texts.of("findings.mend"));

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
    JButton close = new JButton(Texts.of("findings.back"));
    close.addActionListener(pressed -> back.run());
    mend.setName("mend");
    mend.addActionListener(pressed -> list.chosen().ifPresent(put));
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING, 8, 0));
    buttons.add(mend);
    buttons.add(close);
    head.add(buttons, BorderLayout.EAST);
    add(head, BorderLayout.NORTH);
    list.getAccessibleContext().setAccessibleName(Texts.of("findings.area"));
    list.onOpen(go);
    list.onKey("M", put);
    list.addListSelectionListener(chosen -> settle());
    add(new JScrollPane(list), BorderLayout.CENTER);
  }

  private void settle() {
    mend.setEnabled(list.chosen().filter(FindingFix::isOffered).isPresent());
  }

  /** Says that the checks run. */
  public void showChecking() {
    heading.setText(Texts.of("findings.checking"));
  }

  public void show(List<Finding> found) {
    heading.setText(
        found.isEmpty() ? Texts.of("findings.none") : Texts.of("status.findings", found.size()));
    list.show(found);
    settle();
  }

  public void takeFocus() {
    list.requestFocusInWindow();
  }

  private static Rows.Words words(Finding finding) {
    String sign = sign(finding.severity()) + "  " + word(finding.severity());
    return new Rows.Words(sign, finding.message(), finding.remedy());
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
