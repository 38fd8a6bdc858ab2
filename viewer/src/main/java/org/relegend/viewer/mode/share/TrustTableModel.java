package org.relegend.viewer.mode.share;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.table.AbstractTableModel;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.PictureId;
import org.relegend.map.Subject;
import org.relegend.share.Disagreement;
import org.relegend.share.Disagreements;
import org.relegend.share.Statement;
import org.relegend.share.TrustReport;
import org.relegend.viewer.control.Messages;

/** Rows of who says what: one for each statement, and for each way of a disagreement. */
public final class TrustTableModel extends AbstractTableModel {
  /** Columns by the keys of their titles. */
  private static final List<String> COLUMNS =
      List.of("trust.what", "trust.says", "trust.evidence", "trust.who", "trust.when");

  /**
   * One row.
   *
   * @param subject where a click leads
   */
  public record Row(List<String> cells, Optional<Subject> subject, Optional<PictureId> picture) {}

  /** What was gathered. */
  public record Gathered(List<Row> rows, int statements, int disagreements) {}

  private List<Row> rows = List.of();

  /** Everybody's word for something in the map. */
  public static List<Attestation> all(BoardMap map) {
    List<Attestation> all = new ArrayList<>();
    Statement.of(map).forEach(statement -> all.addAll(statement.by()));
    return all;
  }

  /**
   * What fits, disagreements first.
   *
   * @param only disagreements alone
   */
  public static Gathered of(BoardMap map, TrustReport.Filter filter, boolean only) {
    List<Row> rows = new ArrayList<>();
    boolean all = filter.author().isEmpty() && filter.least().isEmpty() && filter.since().isEmpty();
    int disagreements = 0;
    for (Disagreement one : Disagreements.of(map)) {
      if (all || one.fits(filter)) {
        disagreements++;
        for (Disagreement.Position position : one.positions()) {
          rows.add(
              row(
                  "\u2260 " + one.about(),
                  position.says(),
                  position.by(),
                  one.subject(),
                  one.picture()));
        }
      }
    }
    int statements = 0;
    for (Statement statement : Statement.of(map)) {
      if (statement.fits(filter)) {
        statements++;
        if (!only) {
          String name = map.nameOf(statement.about());
          String says = statement.says().substring(name.length()).strip();
          rows.add(
              row(name, says, statement.by(), Optional.of(statement.about()), statement.picture()));
        }
      }
    }
    return new Gathered(rows, statements, disagreements);
  }

  private static Row row(
      String what,
      String says,
      List<Attestation> by,
      Optional<Subject> subject,
      Optional<PictureId> picture) {
    String evidence =
        by.stream()
            .map(Attestation::evidence)
            .distinct()
            .sorted()
            .map(Evidence::word)
            .collect(Collectors.joining(", "));
    String who = by.stream().map(Attestation::author).distinct().collect(Collectors.joining(", "));
    String when =
        by.stream()
            .map(attestation -> attestation.at().toString().substring(0, 10))
            .distinct()
            .sorted()
            .collect(Collectors.joining(", "));
    return new Row(List.of(what, says, evidence, who, when), subject, picture);
  }

  public void show(List<Row> shown) {
    rows = shown;
    fireTableDataChanged();
  }

  public Row at(int row) {
    return rows.get(row);
  }

  @Override
  public int getRowCount() {
    return rows.size();
  }

  @Override
  public int getColumnCount() {
    return COLUMNS.size();
  }

  @Override
  public String getColumnName(int column) {
    return Messages.of(COLUMNS.get(column));
  }

  @Override
  public Object getValueAt(int row, int column) {
    return rows.get(row).cells().get(column);
  }
}
