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
import org.relegend.sheet.JobSheets;
import org.relegend.sheet.MapSheets;
import org.relegend.sheet.Paper;
import org.relegend.sheet.Printed;
import org.relegend.viewer.control.Form;
import org.relegend.viewer.control.Shelf;
import org.relegend.viewer.control.Texts;
import org.relegend.viewer.mode.bench.BenchWork;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.Watch;

/** Asks what is to be printed and where to, then prints it off the event thread. */
final class Printing {
  /** What can be printed. */
  private enum What {
    NODE,
    MAP,
    CUSTOMER,
    SHOP;

    String text() {
      return Texts.of("print.what." + Texts.word(this));
    }
  }

  private final MapWindow window;
  private final Program program;

  Printing(MapWindow window, Program program) {
    this.window = window;
    this.program = program;
  }

  void ask() {
    window.sitting().ifPresent(this::ask);
  }

  private void ask(Sitting sitting) {
    Session session = sitting.session();
    Optional<NetId> node = node(session);
    List<What> offered = new ArrayList<>();
    if (session.room(BenchWork.class).isOpen()) {
      offered.add(What.CUSTOMER);
      offered.add(What.SHOP);
    }
    node.ifPresent(net -> offered.add(What.NODE));
    offered.add(What.MAP);
    List<String> papers = Stream.of(Paper.values()).map(Paper::word).toList();
    Path folder = program.settings().lastFolder();
    new Form("print")
        .line("file", folder.resolve(name(session)).toString())
        .choice("what", offered.stream().map(What::text).toList(), offered.get(0).text())
        .choice("paper", papers, program.settings().paper().word())
        .ask(window)
        .ifPresent(told -> print(sitting, node, told));
  }

  private static String name(Session session) {
    String base = session.room(BenchWork.class).job().map(Job::id).orElse(session.map().id());
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

  private void print(Sitting sitting, Optional<NetId> node, Map<String, String> told) {
    String wanted = told.getOrDefault("what", "");
    What what =
        Stream.of(What.values()).filter(one -> one.text().equals(wanted)).findFirst().orElseThrow();
    Paper paper = Paper.of(told.getOrDefault("paper", Paper.A4.word()));
    program.settings().setPaper(paper);
    Optional<Path> named = window.messages().path(told.getOrDefault("file", ""));
    if (named.isEmpty()) {
      return;
    }
    Path file = named.get();
    Path parent = file.toAbsolutePath().getParent();
    if (parent != null) {
      program.settings().setLastFolder(parent);
    }
    Session session = sitting.session();
    Circuit circuit = session.room(BenchWork.class).circuit();
    Optional<Job> job = session.room(BenchWork.class).job();
    Instant day = session.room(BenchWork.class).now();
    Shelf shelf = sitting.panel().shelf();
    sitting
        .panel()
        .status()
        .watch(
            program
                .jobs()
                .run(
                    Texts.of("print.working", file),
                    watch -> {
                      Printed.requireFree(file);
                      Printed printed =
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

  private static Printed make(
      What what,
      Paper paper,
      Function<Picture, Path> files,
      Circuit circuit,
      Optional<Job> job,
      Optional<NetId> node,
      Instant day,
      Watch watch) {
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
