package org.relegend.viewer.ui;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.relegend.bench.Job;
import org.relegend.circuit.Circuit;
import org.relegend.map.NetId;
import org.relegend.map.Picture;
import org.relegend.map.Subject;
import org.relegend.sheet.FinishedSheets;
import org.relegend.sheet.JobSheets;
import org.relegend.sheet.MapSheets;
import org.relegend.sheet.PaperSize;
import org.relegend.viewer.control.Form;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.OpenedPictures;
import org.relegend.viewer.mode.bench.OpenJob;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.TaskMonitor;

/** Asks what is to be printed and where to, then prints it off the event thread. */
final class SheetPrint {
  /** What can be printed. */
  private enum What {
    NODE,
    MAP,
    CUSTOMER,
    SHOP;

    String text() {
      return Messages.of("print.what." + Messages.word(this));
    }
  }

  private final MapWindow window;
  private final Program program;

  SheetPrint(MapWindow window, Program program) {
    this.window = window;
    this.program = program;
  }

  void ask() {
    window.sitting().ifPresent(this::ask);
  }

  private void ask(OpenMap sitting) {
    Session session = sitting.session();
    Optional<NetId> node = node(session);
    List<What> offered = new ArrayList<>();
    if (session.room(OpenJob.class).isOpen()) {
      offered.add(What.CUSTOMER);
      offered.add(What.SHOP);
    }
    node.ifPresent(net -> offered.add(What.NODE));
    offered.add(What.MAP);
    List<String> papers = Stream.of(PaperSize.values()).map(PaperSize::word).toList();
    Path folder = program.settings().lastFolder();
    new Form("print")
        .line("file", folder.resolve(name(session)).toString())
        .choice("what", offered.stream().map(What::text).toList(), offered.get(0).text())
        .choice("paper", papers, program.settings().paper().word())
        .ask(window)
        .ifPresent(stated -> print(sitting, node, stated));
  }

  private static String name(Session session) {
    String base = session.room(OpenJob.class).job().map(Job::id).orElse(session.map().id());
    return base + ".pdf";
  }

  private static Optional<NetId> node(Session session) {
    Optional<Subject> chosen = session.selection().subject();
    if (chosen.isPresent() && chosen.get() instanceof Subject.OfNet net) {
      return Optional.of(net.net());
    }
    return session.selection().strip().groups().stream()
        .flatMap(group -> group.net().stream())
        .findFirst();
  }

  private void print(OpenMap sitting, Optional<NetId> node, Map<String, String> stated) {
    String wanted = stated.getOrDefault("what", "");
    What what =
        Stream.of(What.values()).filter(one -> one.text().equals(wanted)).findFirst().orElseThrow();
    PaperSize paper = PaperSize.of(stated.getOrDefault("paper", PaperSize.A4.word()));
    program.settings().setPaper(paper);
    Optional<Path> named = window.messages().path(stated.getOrDefault("file", ""));
    if (named.isEmpty()) {
      return;
    }
    Path file = named.get();
    Path parent = file.toAbsolutePath().getParent();
    if (parent != null) {
      program.settings().setLastFolder(parent);
    }
    Session session = sitting.session();
    Circuit circuit = session.room(OpenJob.class).circuit();
    Optional<Job> job = session.room(OpenJob.class).job();
    Instant day = session.room(OpenJob.class).now();
    OpenedPictures shelf = sitting.panel().shelf();
    sitting
        .panel()
        .status()
        .watch(
            program
                .jobs()
                .run(
                    Messages.of("print.working", file),
                    watch -> {
                      FinishedSheets.requireFree(file);
                      FinishedSheets printed =
                          make(what, paper, shelf::fileOf, circuit, job, node, day, watch);
                      printed.writeTo(file);
                      return printed;
                    },
                    printed -> {
                      session.hub().say(Notice.Kind.PRINTED, file.toString(), printed.pages());
                      window.messages().tell(printed.troubles());
                    },
                    window.messages()::fail));
  }

  private static FinishedSheets make(
      What what,
      PaperSize paper,
      Function<Picture, Path> files,
      Circuit circuit,
      Optional<Job> job,
      Optional<NetId> node,
      Instant day,
      TaskMonitor watch) {
    return switch (what) {
      case MAP ->
          new MapSheets(circuit, files)
              .print(paper, MapSheets.allNodes(circuit.map()), day, watch::at);
      case NODE ->
          job.map(open -> MapSheets.forJob(circuit.map(), open, files))
              .orElseGet(() -> new MapSheets(circuit, files))
              .print(paper, node.map(List::of).orElse(List.of()), day, watch::at);
      case CUSTOMER ->
          new JobSheets(job.orElseThrow(), circuit, files, ZoneId.systemDefault())
              .print(JobSheets.Copy.CUSTOMER, paper, day);
      case SHOP ->
          new JobSheets(job.orElseThrow(), circuit, files, ZoneId.systemDefault())
              .print(JobSheets.Copy.SHOP, paper, day);
    };
  }
}
