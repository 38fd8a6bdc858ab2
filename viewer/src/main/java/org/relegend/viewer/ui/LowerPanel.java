package org.relegend.viewer.ui;

import java.awt.CardLayout;
import java.awt.Dimension;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.viewer.control.RowListPanel;
import org.relegend.viewer.mode.bench.JobListPanel;
import org.relegend.viewer.mode.check.FindingFix;
import org.relegend.viewer.mode.check.FindingsPanel;
import org.relegend.viewer.mode.share.ClashPanel;
import org.relegend.viewer.mode.share.TrustPanel;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.TaskRunner;

/** What lies below the pictures: the node strip, or one of the lists in its place. */
final class LowerPanel extends JPanel {
  private static final String STRIP = "strip";

  /** Its height at first: the strip's cards whole, and a scroll bar. */
  private static final int HEIGHT = 268;

  private final transient Session session;
  private final StatusLine status;
  private final transient Runnable back;
  private final FindingsPanel findings;
  private final ClashPanel clashes;
  private final TrustPanel trust;
  private final transient JobListPanel lists;
  private transient Runnable changed = () -> {};

  /**
   * @param back shows the node strip again, and gives it the keyboard
   */
  LowerPanel(Session session, TaskRunner jobs, StatusLine status, NodeStrip strip, Runnable back) {
    super(new CardLayout());
    this.session = session;
    this.status = status;
    this.back = back;
    findings = new FindingsPanel(this::goTo, session.room(FindingFix.class)::mend, this::showStrip);
    clashes = new ClashPanel(session, back);
    trust = new TrustPanel(session, jobs, back);
    lists = new JobListPanel(session, jobs, back);
    add(strip, STRIP);
    List.of(findings, clashes, trust).forEach(this::addNamed);
    lists.all().forEach(this::addNamed);
    setPreferredSize(new Dimension(900, HEIGHT));
    setMinimumSize(new Dimension(200, 120));
  }

  void showStrip() {
    show(STRIP);
  }

  /** Shows a list that was added under this name. */
  void show(String name) {
    ((CardLayout) getLayout()).show(this, name);
    changed.run();
  }

  /** Adds a list by its own name. */
  void addNamed(JComponent list) {
    add(list, list.getName());
  }

  /** Calls back when something else lies there. */
  void onChange(Runnable listener) {
    changed = listener;
  }

  /** The map changed. */
  void settleMap() {
    clashes.refresh();
    trust.refresh();
  }

  /** The job changed. */
  void settleJob() {
    lists.refresh();
  }

  /** Leads to what a finding is about. */
  private void goTo(Finding finding) {
    finding.subjects().stream()
        .findFirst()
        .ifPresentOrElse(
            subject -> session.walk().choose(subject, finding.picture()),
            () -> finding.picture().ifPresent(session.desk()::show));
  }

  /** Shows what the checks found; the button counts what should be mended. */
  void showFindings(List<Finding> found) {
    findings.show(found);
    long grave =
        found.stream().filter(finding -> finding.severity() != Severity.INFORMATION).count();
    status.showFindings((int) grave, (int) (found.size() - grave));
  }

  /** The findings in the place of the node strip, or the strip again. */
  void toggleFindings() {
    if (findings.isVisible()) {
      back.run();
    } else {
      show(findings.getName());
      findings.takeFocus();
    }
  }

  /** What two people said differently, in the place of the node strip; or the strip again. */
  void showClashes() {
    if (clashes.isVisible()) {
      back.run();
    } else {
      show(clashes.getName());
      clashes.takeFocus();
    }
  }

  /** Who says what on which evidence, in the place of the node strip; or the strip again. */
  void showTrust() {
    if (trust.isVisible()) {
      back.run();
    } else {
      show(trust.getName());
      trust.takeFocus();
    }
  }

  /** A list of the job in the place of the node strip, or the strip again. */
  void toggleList(String name) {
    RowListPanel list = lists.list(name);
    if (list.isVisible()) {
      back.run();
    } else {
      show(list);
    }
  }

  /** A list in the place of the node strip, with the keyboard. */
  void show(RowListPanel list) {
    show(list.getName());
    list.takeFocus();
  }

  /** The list of the job that lies below; empty where none does. */
  String listShown() {
    return lists.shown();
  }

  /** A list of the job in the place of the node strip; nothing for a name that is none's. */
  void showList(String name) {
    lists.named(name).ifPresent(list -> show(list.getName()));
  }
}
