package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardId;
import org.relegend.map.Photo;
import org.relegend.map.Placement;
import org.relegend.map.Subject;
import org.relegend.viewer.control.Actions;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.UserAction;
import org.relegend.viewer.paint.Palette;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.BackgroundTask;

/** What was done last, how much of the board is placed, and whether all is saved. */
final class StatusLine extends JPanel {
  private final Session session;
  private final JLabel message = new JLabel(" ");
  private final JLabel coverage = new JLabel();
  private final JButton findings;
  private final JLabel saved = new JLabel();
  private final JLabel working = new JLabel();
  private final JProgressBar progress = new JProgressBar(0, 1000);
  private final JButton stop = new JButton(Messages.of("file.stop"));
  private final Timer pulse = new Timer(120, fired -> showProgress());
  private @Nullable BackgroundTask watched;
  private int pulses;

  StatusLine(Session session, Actions acts) {
    super(new BorderLayout(12, 0));
    this.session = session;
    setBorder(BorderFactory.createEmptyBorder(4, 12, 6, 12));
    message.setName("said");
    message.setOpaque(false);
    saved.setName("saved");
    findings = new JButton(acts.action(UserAction.FINDINGS));
    findings.setFocusable(false);
    add(message, BorderLayout.CENTER);
    JPanel right = new JPanel(new FlowLayout(FlowLayout.TRAILING, 14, 0));
    stop.setFocusable(false);
    stop.addActionListener(pressed -> stopWatched());
    right.add(working);
    right.add(progress);
    right.add(stop);
    right.add(coverage);
    right.add(findings);
    right.add(saved);
    add(right, BorderLayout.EAST);
    count();
    showProgress();
  }

  /** Shows how far a job is, with a way to stop it, once it takes longer than half a second. */
  void watch(BackgroundTask job) {
    watched = job;
    pulses = 0;
    pulse.start();
  }

  private void showProgress() {
    BackgroundTask job = watched;
    pulses++;
    boolean shown = job != null && !job.over() && pulses > 4;
    working.setVisible(shown);
    progress.setVisible(shown);
    stop.setVisible(shown);
    if (shown && job != null) {
      working.setText(job.label());
      progress.setValue((int) (1000 * job.fraction()));
    }
    if (job == null || job.over()) {
      watched = null;
      pulse.stop();
    }
  }

  private void stopWatched() {
    if (watched != null) {
      watched.cancel();
    }
  }

  /** Says the last notice; what did not happen stands out by a mark and by its ground. */
  void say() {
    Optional<Notice> notice = session.notice();
    boolean refusal = notice.filter(last -> last.kind().isRefusal()).isPresent();
    String text = notice.map(Messages::of).orElse(" ");
    message.setText(refusal ? "\u2717 " + text : text);
    message.setOpaque(refusal);
    message.setBackground(refusal ? Palette.YELLOW : null);
    message.setForeground(refusal ? Palette.BLACK : null);
    message.getAccessibleContext().setAccessibleName(text);
    repaint();
  }

  /** Counts how many parts of the board shown are placed on the photo shown. */
  void count() {
    Optional<Photo> photo = session.desk().photo();
    if (photo.isEmpty()) {
      coverage.setText("");
      return;
    }
    BoardId board = photo.get().board();
    long parts = session.map().parts().stream().filter(part -> part.board().equals(board)).count();
    boolean own = session.document().isOwn(photo.get().id());
    long placed =
        session.document().seen().placements().stream()
            .filter(place -> place.picture().equals(photo.get().id()))
            .filter(place -> own || session.map().placements().has(place.key()))
            .map(Placement::subject)
            .filter(Subject.OfPart.class::isInstance)
            .distinct()
            .count();
    String counted = Messages.of(own ? "status.carried" : "status.coverage", placed, parts);
    long carried = own ? 0 : carried(photo.get());
    coverage.setText(carried == 0 ? counted : counted + Messages.of("status.carried.too", carried));
  }

  /** Parts that aren't placed there themselves, but show by a line-up. */
  private long carried(Photo photo) {
    return session.document().seen().placements().stream()
        .filter(place -> place.picture().equals(photo.id()))
        .filter(place -> !session.map().placements().has(place.key()))
        .map(Placement::subject)
        .filter(Subject.OfPart.class::isInstance)
        .distinct()
        .count();
  }

  void showSaved(String text) {
    saved.setText(text);
  }

  /** Counts what should be mended; where that is nothing, what else was noted. */
  void showFindings(int grave, int notes) {
    findings.setText(
        grave == 0 && notes > 0
            ? Messages.of("status.notes", notes)
            : Messages.of("status.findings", grave));
  }
}
