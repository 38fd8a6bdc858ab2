package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import org.relegend.lineup.Extent;
import org.relegend.lineup.Fit;
import org.relegend.lineup.KeptLineUp;
import org.relegend.lineup.PairError;
import org.relegend.lineup.Warning;
import org.relegend.map.Picture;
import org.relegend.map.PicturePairs.Found;
import org.relegend.viewer.session.Pairing;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.Tool;

/** The pairs of two photos that are lined up: what each is off by, and what to do next. */
final class PairsPanel extends JPanel {
  private static final String[] COLUMNS = {"pairs.number", "pairs.off", "pairs.standing"};

  private final Session session;
  private final JLabel head = new JLabel(" ");
  private final JLabel advice = new JLabel(" ");
  private final Rows rows = new Rows();
  private final JTable table = new JTable(rows);
  private boolean settling;

  PairsPanel(Session session, Acts acts) {
    super(new BorderLayout(12, 6));
    this.session = session;
    setBorder(BorderFactory.createEmptyBorder(8, 12, 8, 12));
    setName("pairs");
    head.setName("pairs-head");
    head.putClientProperty("FlatLaf.styleClass", "h3");
    advice.setName("pairs-advice");
    JPanel texts = new JPanel(new BorderLayout(0, 4));
    texts.add(head, BorderLayout.NORTH);
    texts.add(advice, BorderLayout.CENTER);
    add(texts, BorderLayout.NORTH);
    table.setName("pairs-table");
    table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    table.setFillsViewportHeight(true);
    table.getAccessibleContext().setAccessibleName(Texts.of("pairs.area"));
    table.getSelectionModel().addListSelectionListener(event -> choose());
    add(new JScrollPane(table), BorderLayout.CENTER);
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, 8, 0));
    for (Act act : List.of(Act.LINE_UP_ALONE, Act.TAKE_AWAY, Act.BACK)) {
      JButton button = new JButton(acts.action(act));
      button.setText(Texts.of("pairs." + Texts.word(act)));
      button.setHideActionText(false);
      button.setFocusable(false);
      buttons.add(button);
    }
    add(buttons, BorderLayout.SOUTH);
  }

  private void choose() {
    int row = table.getSelectedRow();
    if (!settling && row >= 0) {
      session.pairing().choose(row);
    }
  }

  /** Shows the pairs as they are now. */
  void settle() {
    if (session.tool() != Tool.LINE_UP) {
      return;
    }
    settling = true;
    rows.fireTableDataChanged();
    session.pairing().chosen().ifPresent(row -> table.setRowSelectionInterval(row, row));
    settling = false;
    head.setText(headText());
    String text = "<html>" + adviceText() + "</html>";
    advice.setText(text);
    advice.getAccessibleContext().setAccessibleName(text);
  }

  private String headText() {
    Pairing pairing = session.pairing();
    String names =
        Texts.of(
            "pairs.names",
            pairing.left().map(Picture::caption).orElse(""),
            pairing.right().map(Picture::caption).orElse(""));
    return names + ": " + error();
  }

  private String error() {
    Pairing pairing = session.pairing();
    Optional<Fit> fit = pairing.fit();
    if (fit.isPresent() && fit.get().pairs().size() <= Pairing.ALWAYS_FIT) {
      return Texts.of("pairs.always", fit.get().pairs().size(), middle());
    }
    if (fit.isPresent()) {
      return Texts.of(
          "pairs.error",
          fit.get().inliers().size(),
          fit.get().pairs().size(),
          tenths(fit.get().rms()),
          tenths(fit.get().p95()),
          middle());
    }
    boolean alone = pairing.kept().filter(pairs -> pairs.found() == Found.AUTOMATIC).isPresent();
    return alone && pairing.lineUp().isPresent()
        ? Texts.of("pairs.alone", pairing.kept().orElseThrow().spots().size(), middle())
        : Texts.of("pairs.few", pairing.spots().size());
  }

  /** The stated circle in the middle of the picture. */
  private String middle() {
    Picture left = session.pairing().left().orElseThrow();
    return session
        .pairing()
        .lineUp()
        .map(way -> tenths(way.radius95(Extent.of(left.width(), left.height()).centre())))
        .orElse("?");
  }

  private static String tenths(double pixels) {
    return String.format(Locale.getDefault(), "%.1f", pixels);
  }

  private String adviceText() {
    Pairing pairing = session.pairing();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < pairing.spots().size(); i++) {
      if (pairing.standing(i) == Pairing.Standing.WRONG
          || pairing.standing(i) == Pairing.Standing.DOUBTFUL) {
        lines.add("<b>\u26a0 " + Texts.of("pairs.bad", i + 1, off(i)) + "</b>");
      }
    }
    pairing
        .result()
        .filter(KeptLineUp.Refused.class::isInstance)
        .filter(refused -> pairing.spots().size() >= 4)
        .ifPresent(
            refused ->
                lines.add("<b>" + ((KeptLineUp.Refused) refused).refusal().message() + "</b>"));
    pairing
        .fit()
        .ifPresent(
            fit ->
                fit.warnings().stream()
                    .filter(warning -> warning.kind() != Warning.Kind.WRONG_PAIRS)
                    .forEach(warning -> lines.add(warning.message())));
    if (lines.isEmpty()) {
      boolean alone = pairing.spots().isEmpty() && pairing.lineUp().isPresent();
      String next = alone ? "pairs.instead" : "pairs.next";
      lines.add(Texts.of(pairing.half().isPresent() ? "pairs.other" : next));
    }
    return String.join("<br>", lines);
  }

  private String off(int pair) {
    return session
        .pairing()
        .fit()
        .map(fit -> off(fit.errors().get(pair), fit.pairs().size()))
        .orElse("");
  }

  /** What the others say of a pair means little where they are hardly more than always fit. */
  private static String off(PairError error, int pairs) {
    boolean others = error.used() && (pairs > Pairing.ALWAYS_FIT + 1 || error.doubtful());
    double off = others ? error.leaveOneOut() : error.residual();
    return Double.isFinite(off) ? tenths(off) : "?";
  }

  /** One row for each clicked pair. */
  private final class Rows extends AbstractTableModel {
    @Override
    public int getRowCount() {
      return session.pairing().spots().size();
    }

    @Override
    public int getColumnCount() {
      return COLUMNS.length;
    }

    @Override
    public String getColumnName(int column) {
      return Texts.of(COLUMNS[column]);
    }

    @Override
    public Object getValueAt(int row, int column) {
      return switch (column) {
        case 0 -> row + 1;
        case 1 -> off(row);
        default -> Texts.of("pairs." + Texts.word(session.pairing().standing(row)));
      };
    }
  }
}
