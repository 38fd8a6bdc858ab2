package org.relegend.viewer.command;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Kinds;
import org.relegend.circuit.KindsException;
import org.relegend.map.BoardMap;
import picocli.CommandLine.Option;

/** Kinds of part beside those that come with the program. */
final class KindsOption {
  @Option(
      names = "--kinds",
      paramLabel = "FILE",
      description = {
        "a table of further kinds of part with their pinouts (lib/docs/tables.md);",
        "a kind that the program has too is replaced"
      })
  private @Nullable Path file;

  Kinds kinds() throws CommandFailure {
    if (file == null) {
      return Kinds.standard();
    }
    try {
      return Kinds.standard().with(file);
    } catch (KindsException wrong) {
      throw new CommandFailure("--kinds " + wrong.getMessage());
    }
  }

  Circuit circuit(BoardMap map) throws CommandFailure {
    return Circuit.of(map, kinds());
  }
}
