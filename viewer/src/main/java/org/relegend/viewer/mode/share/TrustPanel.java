package org.relegend.viewer.mode.share;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.share.TrustReport;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.LatestJob;
import org.relegend.viewer.work.TaskRunner;

/** Who says what, when and on which evidence, with what is said in two ways on top. */
public final class TrustPanel extends JPanel {
  private static final List<Evidence> GRADES = List.of(Evidence.values());

  private final Session session;
  private final LatestJob latest;
  private final TrustTableModel rows = new TrustTableModel();
  private final JTable table = new JTable(rows);
  private final JLabel heading = new JLabel();
  private final JComboBox<String> who = new JComboBox<>();
  private final JComboBox<String> least = new JComboBox<>();
  private final JComboBox<String> since = new JComboBox<>();
  private final JCheckBox twoWays = new JCheckBox(Messages.of("trust.twoways"));
  private boolean filling;

  /**
   * @param back shows the node strip again
   */
  public TrustPanel(Session session, TaskRunner jobs, Runnable back) {
    super(new BorderLayout(0, 4));
    this.session = session;
    latest = new LatestJob(jobs);
    setName("trust-area");
    setBorder(BorderFactory.createEmptyBorder(6, 10, 4, 10));
    heading.setName("trust-heading");
    heading.putClientProperty("FlatLaf.styleClass", "h2");
    JButton close = new JButton(Messages.of("findings.back"));
    close.addActionListener(pressed -> back.run());
    JPanel head = new JPanel(new BorderLayout(12, 0));
    head.add(heading, BorderLayout.CENTER);
    head.add(close, BorderLayout.EAST);
    head.add(filters(), BorderLayout.SOUTH);
    add(head, BorderLayout.NORTH);
    table.setName("trust");
    table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    table.setAutoCreateRowSorter(true);
    table.setFillsViewportHeight(true);
    table.getAccessibleContext().setAccessibleName(Messages.of("trust.area"));
    key("ENTER", this::go);
    key("ESCAPE", back);
    table.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent event) {
            go();
          }
        });
    add(new JScrollPane(table), BorderLayout.CENTER);
  }

  private JComponent filters() {
    JPanel filters = new JPanel(new FlowLayout(FlowLayout.LEADING, 8, 2));
    filter(filters, "trust.who", who);
    filter(filters, "trust.least", least);
    filter(filters, "trust.since", since);
    twoWays.setName("trust.twoways");
    twoWays.addActionListener(changed -> gather());
    filters.add(twoWays);
    least.addItem(Messages.of("trust.any"));
    GRADES.forEach(evidence -> least.addItem(Messages.of("act." + Messages.word(evidence))));
    return filters;
  }

  private void filter(JPanel filters, String key, JComboBox<String> box) {
    JLabel label = new JLabel(Messages.of(key));
    label.setLabelFor(box);
    box.setName(key);
    box.addActionListener(
        changed -> {
          if (!filling) {
            gather();
          }
        });
    filters.add(label);
    filters.add(box);
  }

  private void key(String key, Runnable deed) {
    table
        .getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
        .put(KeyStroke.getKeyStroke(key), "trust-" + key);
    table
        .getActionMap()
        .put(
            "trust-" + key,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                deed.run();
              }
            });
  }

  private void go() {
    int row = table.getSelectedRow();
    if (row >= 0) {
      TrustTableModel.Row chosen = rows.at(table.convertRowIndexToModel(row));
      chosen.subject().ifPresent(subject -> session.walk().choose(subject, chosen.picture()));
    }
  }

  /** Takes up the map as it is now, if it is being looked at. */
  public void refresh() {
    if (isVisible()) {
      fill();
      gather();
    }
  }

  public void takeFocus() {
    fill();
    gather();
    table.requestFocusInWindow();
  }

  /** Who and which days there are to choose from; what was chosen stays. */
  private void fill() {
    filling = true;
    BoardMap map = session.map();
    Set<String> names = new TreeSet<>();
    Set<String> days = new TreeSet<>();
    for (Attestation attestation : TrustTableModel.all(map)) {
      names.add(attestation.author());
      days.add(attestation.at().toString().substring(0, 10));
    }
    fill(who, names);
    fill(since, days);
    filling = false;
  }

  private static void fill(JComboBox<String> box, Set<String> choices) {
    Object kept = box.getSelectedItem();
    box.removeAllItems();
    box.addItem(Messages.of("trust.any"));
    choices.forEach(box::addItem);
    if (kept != null && choices.contains(String.valueOf(kept))) {
      box.setSelectedItem(kept);
    }
  }

  private TrustReport.Filter filter() {
    Optional<String> author =
        who.getSelectedIndex() <= 0
            ? Optional.empty()
            : Optional.of(String.valueOf(who.getSelectedItem()));
    Optional<Evidence> evidence =
        least.getSelectedIndex() <= 0
            ? Optional.empty()
            : Optional.of(GRADES.get(least.getSelectedIndex() - 1));
    Optional<Instant> day =
        since.getSelectedIndex() <= 0
            ? Optional.empty()
            : Optional.of(
                LocalDate.parse(String.valueOf(since.getSelectedItem()))
                    .atStartOfDay(ZoneOffset.UTC)
                    .toInstant());
    return new TrustReport.Filter(author, evidence, day);
  }

  /** Gathered off the event thread; what comes late is dropped. */
  private void gather() {
    latest.cancel();
    BoardMap map = session.map();
    TrustReport.Filter filter = filter();
    boolean only = twoWays.isSelected();
    latest.run(
        Messages.of("trust.area"),
        watch -> TrustTableModel.of(map, filter, only),
        found -> {
          rows.show(found.rows());
          heading.setText(Messages.of("trust.heading", found.statements(), found.disagreements()));
        },
        problem -> heading.setText(Messages.of("error.unexpected", problem.toString())));
  }
}
