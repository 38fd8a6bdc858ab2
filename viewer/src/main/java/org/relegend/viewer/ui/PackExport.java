package org.relegend.viewer.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.JOptionPane;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import org.relegend.scan.Progress;
import org.relegend.share.PackOptions;
import org.relegend.share.PackReport;
import org.relegend.share.PackWriter;
import org.relegend.viewer.control.Form;
import org.relegend.viewer.control.Messages;

/** Packs the open map to give away, and tells what went in and what stayed out. */
final class PackExport {
  private static final String OUT = Messages.of("givepack.out");
  private static final String IN = Messages.of("givepack.in");

  private final MapWindow window;
  private final Program program;

  PackExport(MapWindow window, Program program) {
    this.window = window;
    this.program = program;
  }

  /** Asks what goes in; nobody's name, no free text and no page does unasked. */
  void ask() {
    Optional<OpenMap> open = window.sitting();
    if (open.isEmpty()) {
      return;
    }
    Path map = open.get().folder().path().toAbsolutePath();
    Path proposed = map.resolveSibling(map.getFileName() + PackWriter.ENDING);
    new Form("givepack")
        .line("file", proposed.toString())
        .choice("photos", List.of(IN, OUT), IN)
        .choice("pages", List.of(OUT, IN), OUT)
        .choice("notes", List.of(OUT, IN), OUT)
        .choice("names", List.of(OUT, IN), OUT)
        .line("never", "")
        .ask(window)
        .ifPresent(
            stated ->
                window
                    .messages()
                    .path(stated.getOrDefault("file", ""))
                    .ifPresent(
                        file -> window.saved(() -> pack(open.get(), file, options(stated)))));
  }

  private static PackOptions options(Map<String, String> stated) {
    return new PackOptions(
        goesIn(stated, "photos") ? Optional.empty() : Optional.of(Set.of()),
        goesIn(stated, "pages"),
        goesIn(stated, "notes"),
        goesIn(stated, "names"),
        Map.of(),
        Stream.of(stated.getOrDefault("never", "").split(";"))
            .map(String::strip)
            .filter(text -> !text.isEmpty())
            .toList());
  }

  private static boolean goesIn(Map<String, String> stated, String field) {
    return IN.equals(stated.get(field));
  }

  private void pack(OpenMap open, Path file, PackOptions options) {
    program
        .jobs()
        .run(
            Messages.of("givepack.working", file),
            watch -> PackWriter.write(open.folder(), file, options, Progress.UNWATCHED),
            report -> tell(file, report),
            window.messages()::fail);
  }

  private void tell(Path file, PackReport report) {
    JTextArea text =
        new JTextArea(
            Messages.of(
                "givepack.report",
                file,
                String.join("\n    ", report.wentIn()),
                String.join("\n    ", report.stayedOut())),
            18,
            64);
    text.setName("givepack.report");
    text.setEditable(false);
    text.setLineWrap(true);
    text.setWrapStyleWord(true);
    text.setCaretPosition(0);
    JOptionPane.showMessageDialog(
        window, new JScrollPane(text), Messages.of("givepack.title"), JOptionPane.PLAIN_MESSAGE);
  }
}
