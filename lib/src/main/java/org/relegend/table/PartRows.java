package org.relegend.table;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.relegend.circuit.Kind;
import org.relegend.circuit.PartTypes;
import org.relegend.map.BoardId;
import org.relegend.map.Channel;
import org.relegend.map.Designator;
import org.relegend.map.Part;
import org.relegend.map.PartId;

/** Reads rows of parts into a draft. */
final class PartRows {
  private final MapDraft draft;
  private final ImportOptions options;
  private final TableProblems problems;
  private final Map<PartId, Integer> lines = new HashMap<>();

  PartRows(MapDraft draft, ImportOptions options, TableProblems problems) {
    this.draft = draft;
    this.options = options;
    this.problems = problems;
  }

  void read(TableRow row) {
    Optional<Designator> designator = row.read("designator", Designator::new, problems);
    Optional<Optional<BoardId>> board =
        row.read(
            "board",
            text -> text.isEmpty() ? Optional.empty() : Optional.of(new BoardId(text)),
            problems);
    if (designator.isEmpty() || board.isEmpty()) {
      return;
    }
    PartName name = new PartName(board.get(), designator.get());
    row.read("board", text -> draft.findOrMake(name), problems).ifPresent(part -> fill(part, row));
  }

  private void fill(PartDraft part, TableRow row) {
    Integer earlier = lines.putIfAbsent(part.id(), row.line());
    if (earlier != null) {
      problems.add(
          row.problem(
              "designator",
              "part %s of board %s stands in line %d already"
                  .formatted(part.designator(), part.board(), earlier)));
      return;
    }
    part.tell();
    set(part, row, "kind", Part::kind, (p, kind) -> p.withKind(kind.toLowerCase(Locale.ROOT)));
    set(part, row, "value", Part::value, Part::withValue);
    set(part, row, "package", Part::casing, Part::withCasing);
    set(part, row, "channel", Part::channel, PartRows::inChannel);
    set(part, row, "note", Part::note, Part::withNote);
  }

  private static Part inChannel(Part part, String name) {
    return part.withChannel(new Channel(name, "", "").name());
  }

  private void set(
      PartDraft part,
      TableRow row,
      String column,
      Function<Part, String> field,
      BiFunction<Part, String, Part> with) {
    if (!row.has(column)) {
      return;
    }
    Optional<Part> read = row.read(column, text -> with.apply(part.fields(), text), problems);
    if (read.isEmpty()) {
      return;
    }
    String known = field.apply(part.fields());
    String line = field.apply(read.get());
    if (known.isEmpty() || known.equals(line) || options.replace()) {
      part.setFields(read.get());
    } else if (!column.equals("kind") || !isOneKind(known, line)) {
      problems.add(
          row.problem(
              column,
              "%s is \"%s\" in the map and \"%s\" here: correct one, or let the table replace it"
                  .formatted(part.designator(), known, line)));
    }
  }

  /** Whether two words mean one kind, as "elco" and "cap-pol" do, or a type and its kind. */
  private boolean isOneKind(String known, String text) {
    Optional<Kind> kind = options.kinds().find(known);
    Optional<Kind> other =
        options
            .kinds()
            .find(text)
            .or(
                () ->
                    PartTypes.standard()
                        .find(text)
                        .flatMap(type -> options.kinds().find(type.kind())));
    return kind.isPresent() && kind.equals(other);
  }
}
