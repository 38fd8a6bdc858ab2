package org.relegend.viewer.mode.lineup;

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
import org.relegend.lineup.FitWarning;
import org.relegend.lineup.PairError;
import org.relegend.lineup.StoredLineUp;
import org.relegend.map.Picture;
import org.relegend.map.PicturePairs.Origin;
import org.relegend.viewer.control.Actions;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.UserAction;
import org.relegend.viewer.session.Session;

/** The pairs of two photos that are lined up: what each is off by, and what to do next. */
public final class PairsPanel extends JPanel {
  private static final String[] COLUMNS = {"pairs.number", "pairs.off", "pairs.standing"};

  private final Session session;
  private final JLabel head = new JLabel(" ");
  private final JLabel advice = new JLabel(" ");
  private final Rows rows = new Rows();
  private final JTable table = new JTable(rows);
  private boolean settling;

  public PairsPanel(Session session, Actions acts) {
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
    table.getAccessibleContext().setAccessibleName(Messages.of("pairs.area"));
    table.getSelectionModel().addListSelectionListener(event -> choose());
    add(new JScrollPane(table), BorderLayout.CENTER);
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, 8, 0));
    for (UserAction act :
        List.of(UserAction.LINE_UP_ALONE, UserAction.TAKE_AWAY, UserAction.BACK)) {
      JButton button = new JButton(acts.action(act));
      button.setText(Messages.of("pairs." + Messages.word(act)));
      button.setHideActionText(false);
      button.setFocusable(false);
      buttons.add(button);
    }
    add(buttons, BorderLayout.SOUTH);
  }

  private void choose() {
    int row = table.getSelectedRow();
    if (!settling && row >= 0) {
      session.room(LineUpTool.class).choose(row);
    }
  }

  /** Shows the pairs as they are now. */
  public void refresh() {
    if (!session.isIn(LineUpTool.class)) {
      return;
    }
    settling = true;
    rows.fireTableDataChanged();
    session
        .room(LineUpTool.class)
        .chosen()
        .ifPresent(row -> table.setRowSelectionInterval(row, row));
    settling = false;
    head.setText(headText());
    String text = "<html>" + adviceText() + "</html>";
    advice.setText(text);
    advice.getAccessibleContext().setAccessibleName(text);
  }

  private String headText() {
    LineUpTool pairing = session.room(LineUpTool.class);
    String names =
        Messages.of(
            "pairs.names",
            pairing.left().map(Picture::caption).orElse(""),
            pairing.right().map(Picture::caption).orElse(""));
    return names + ": " + error();
  }

  private String error() {
    LineUpTool pairing = session.room(LineUpTool.class);
    Optional<Fit> fit = pairing.fit();
    if (fit.isPresent() && fit.get().pairs().size() <= LineUpTool.ALWAYS_FIT) {
      return Messages.of("pairs.always", fit.get().pairs().size(), middle());
    }
    if (fit.isPresent()) {
      return Messages.of(
          "pairs.error",
          fit.get().inliers().size(),
          fit.get().pairs().size(),
          tenths(fit.get().rms()),
          tenths(fit.get().p95()),
          middle());
    }
    boolean alone = pairing.kept().filter(pairs -> pairs.origin() == Origin.AUTOMATIC).isPresent();
    return alone && pairing.lineUp().isPresent()
        ? Messages.of("pairs.alone", pairing.kept().orElseThrow().spots().size(), middle())
        : Messages.of("pairs.few", pairing.spots().size());
  }

  /** The stated circle in the middle of the picture. */
  private String middle() {
    Picture left = session.room(LineUpTool.class).left().orElseThrow();
    return session
        .room(LineUpTool.class)
        .lineUp()
        .map(way -> tenths(way.radius95(Extent.of(left.width(), left.height()).centre())))
        .orElse("?");
  }

  private static String tenths(double pixels) {
    return String.format(Locale.getDefault(), "%.1f", pixels);
  }

  private String adviceText() {
    LineUpTool pairing = session.room(LineUpTool.class);
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < pairing.spots().size(); i++) {
      if (pairing.standing(i) == LineUpTool.PairState.WRONG
          || pairing.standing(i) == LineUpTool.PairState.DOUBTFUL) {
        lines.add("<b>\u26a0 " + Messages.of("pairs.bad", i + 1, off(i)) + "</b>");
      }
    }
    pairing
        .result()
        .filter(StoredLineUp.Refused.class::isInstance)
        .filter(refused -> pairing.spots().size() >= 4)
        .ifPresent(
            refused ->
                lines.add("<b>" + ((StoredLineUp.Refused) refused).refusal().message() + "</b>"));
    pairing
        .fit()
        .ifPresent(
            fit ->
                fit.warnings().stream()
                    .filter(warning -> warning.kind() != FitWarning.Kind.WRONG_PAIRS)
                    .forEach(warning -> lines.add(warning.message())));
    if (lines.isEmpty()) {
      boolean alone = pairing.spots().isEmpty() && pairing.lineUp().isPresent();
      String next = alone ? "pairs.instead" : "pairs.next";
      lines.add(Messages.of(pairing.half().isPresent() ? "pairs.other" : next));
    }
    return String.join("<br>", lines);
  }

  private String off(int pair) {
    return session
        .room(LineUpTool.class)
        .fit()
        .map(fit -> off(fit.errors().get(pair), fit.pairs().size()))
        .orElse("");
  }

  /** What the others say of a pair means little where they are hardly more than always fit. */
  private static String off(PairError error, int pairs) {
    boolean others = error.used() && (pairs > LineUpTool.ALWAYS_FIT + 1 || error.doubtful());
    double off = others ? error.leaveOneOut() : error.residual();
    return Double.isFinite(off) ? tenths(off) : "?";
  }

  /** One row for each clicked pair. */
  private final class Rows extends AbstractTableModel {
    @Override
    public int getRowCount() {
      return session.room(LineUpTool.class).spots().size();
    }

    @Override
    public int getColumnCount() {
      return COLUMNS.length;
    }

    @Override
    public String getColumnName(int column) {
      return Messages.of(COLUMNS[column]);
    }

    @Override
    public Object getValueAt(int row, int column) {
      return switch (column) {
        case 0 -> row + 1;
        case 1 -> off(row);
        default ->
            Messages.of("pairs." + Messages.word(session.room(LineUpTool.class).standing(row)));
      };
    }
  }
}
