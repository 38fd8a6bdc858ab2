package org.relegend.solve;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** ngspice as a process: an independent circuit simulator (Debian package ngspice). */
final class Ngspice {
  private static final Path PROGRAM = Path.of("/usr/bin/ngspice");
  private static final Pattern VALUE =
      Pattern.compile("^(v[ri]?\\(\\w+\\)) = ([-+0-9.eE]+)", Pattern.MULTILINE);

  private Ngspice() {}

  static boolean isThere() {
    return Files.isExecutable(PROGRAM);
  }

  /** What a deck prints, by name; empty where the simulator found no solution. */
  static Map<String, Double> run(String deck) throws IOException, InterruptedException {
    Path file = Files.createTempFile("deck", ".cir");
    try {
      Files.writeString(file, deck);
      Process process =
          new ProcessBuilder(PROGRAM.toString(), "-b", file.toString())
              .redirectErrorStream(true)
              .start();
      String output =
          new String(
              process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.US_ASCII);
      process.waitFor();
      Map<String, Double> values = new HashMap<>();
      Matcher matcher = VALUE.matcher(output);
      while (matcher.find()) {
        values.put(matcher.group(1), Double.valueOf(matcher.group(2)));
      }
      return values;
    } finally {
      Files.delete(file);
    }
  }

  /** The direct volts of all nodes of a netlist. */
  static Map<String, Double> direct(Netlist netlist) throws IOException, InterruptedException {
    SpiceDeck deck = new SpiceDeck(netlist);
    Map<String, Double> printed = run(deck.direct());
    Map<String, Double> volts = new HashMap<>();
    deck.nodes()
        .forEach(
            (name, node) -> {
              Double value = printed.get("v(" + node + ")");
              if (value != null) {
                volts.put(name, value);
              }
            });
    return volts;
  }
}
