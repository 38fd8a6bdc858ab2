package org.relegend.viewer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.Subject;
import org.relegend.viewer.session.Finder;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.Subjects;
import org.relegend.viewer.session.Tool;
import org.relegend.viewer.work.Job;
import org.relegend.viewer.work.Jobs;

/**
 * Makes the find field do what the tool in hand needs: find as one types, complete the name to be
 * placed, or take a line of a trace. Searching runs elsewhere; what comes late is dropped.
 */
final class FindBar {
  private static final int SHOWN = 12;

  private final Session session;
  private final Jobs jobs;
  private final FindField field;
  private final FindResults results;
  private final Runnable leave;
  private @Nullable Finder finder;
  private @Nullable BoardMap searched;
  private @Nullable Job running;
  private boolean goAtOnce;
  private boolean expectsNode;

  /**
   * @param leave gives the keyboard to where one goes on after a find
   */
  FindBar(Session session, Jobs jobs, FindField field, Runnable leave) {
    this.session = session;
    this.jobs = jobs;
    this.field = field;
    this.leave = leave;
    results = new FindResults(field);
    field.onTyped(this::typed);
    field.onKey("ENTER", this::enter);
    field.onKey("DOWN", () -> results.step(1));
    field.onKey("UP", () -> results.step(-1));
    field.onKey("ESCAPE", this::escape);
    field.addFocusListener(
        new java.awt.event.FocusAdapter() {
          @Override
          public void focusLost(java.awt.event.FocusEvent event) {
            results.close();
            expectNode(event.isTemporary() && expectsNode);
            if (session.tool() == Tool.LOOK && !event.isTemporary()) {
              field.offer("");
            }
          }
        });
    settle();
  }

  /** A tool was taken in hand: what was typed for another gives way to what this one offers. */
  void takeUp() {
    Tool tool = session.tool();
    results.close();
    field.offer(
        tool.takesName()
            ? session.placing().typed()
            : tool == Tool.TRACE ? session.tracing().name() : "");
    settle();
  }

  /** After a reading: the next node's name, or Esc back to commands; what is chosen stays. */
  void expectNode() {
    expectNode(true);
  }

  private void expectNode(boolean expected) {
    expectsNode = expected;
    settle();
  }

  boolean expectsNode() {
    return expectsNode;
  }

  /** Takes up the tool in hand, and the name that it offers. */
  void settle() {
    Tool tool = session.tool();
    field.setHint(Texts.of(expectsNode && tool == Tool.LOOK ? "find.next.hint" : hintKey(tool)));
    if (tool.takesName()) {
      if (!field.getText().equals(session.placing().typed())) {
        field.offer(session.placing().typed());
      }
    } else if (tool == Tool.TRACE && !field.isFocusOwner()) {
      field.offer(session.tracing().name());
    } else if (!field.isFocusOwner()) {
      field.offer("");
    }
  }

  private static String hintKey(Tool tool) {
    return switch (tool) {
      case PLACE -> "find.place.hint";
      case PINS -> "find.pins.hint";
      case TRACE -> "find.trace.hint";
      case LOOK, ZONE, LINE_UP, MEASURE, STRAIGHTEN -> "find.hint";
    };
  }

  private void typed(String text) {
    goAtOnce = false;
    if (session.tool().takesName()) {
      session.placing().type(text);
      offerCompletions(text);
    } else if (session.tool() == Tool.TRACE) {
      results.close();
    } else {
      search(text);
    }
  }

  private void offerCompletions(String text) {
    Optional<PictureId> picture = session.desk().photo().map(Photo::id);
    List<FindResults.Line> lines = new ArrayList<>();
    for (String name : session.placing().completions(text, picture)) {
      lines.add(new FindResults.Line(name, "", () -> complete(name)));
    }
    if (text.isBlank() || lines.isEmpty()) {
      results.close();
    } else {
      results.show(lines, "");
    }
  }

  private void complete(String name) {
    session.placing().type(name);
    field.offer(name);
    results.close();
  }

  private void search(String text) {
    if (running != null) {
      running.cancel();
    }
    if (text.isBlank()) {
      results.close();
      return;
    }
    BoardMap map = session.map();
    Finder known = map.equals(searched) ? finder : null;
    running =
        jobs.run(
            text,
            watch -> {
              Finder searching = known == null ? new Finder(map) : known;
              return new Searched(searching, searching.find(text, SHOWN));
            },
            found -> show(text, map, found),
            problem -> results.close());
  }

  private record Searched(Finder finder, List<Finder.Found> found) {}

  private void show(String text, BoardMap map, Searched result) {
    finder = result.finder();
    searched = map;
    if (!field.getText().equals(text) || session.tool().takesName()) {
      return;
    }
    List<FindResults.Line> lines = result.found().stream().map(this::line).toList();
    if (goAtOnce && !lines.isEmpty()) {
      lines.get(0).go().run();
    } else {
      results.show(lines, Texts.of("find.none", text));
    }
  }

  private FindResults.Line line(Finder.Found found) {
    String name = session.map().nameOf(found.subject());
    return new FindResults.Line(name, detail(found), () -> go(found.subject()));
  }

  private String detail(Finder.Found found) {
    List<String> words = new ArrayList<>();
    Subject subject = found.subject();
    if (subject instanceof Subject.OfNet net) {
      int pins = session.map().net(net.net()).map(Net::members).map(List::size).orElse(0);
      words.add(Texts.of("find.net", pins));
      session.map().net(net.net()).ifPresent(node -> addChannel(node.channel(), words));
    } else {
      words.add(Texts.of(kindKey(subject)));
      Subjects.partOf(subject).flatMap(session.map()::part).ifPresent(part -> add(part, words));
    }
    switch (found.fit()) {
      case DRAWN_NAME -> words.add(Texts.of("find.drawn", found.matched()));
      case NOTE -> words.add(Texts.of("find.note", found.matched()));
      default -> {}
    }
    words.removeIf(String::isEmpty);
    return String.join(" \u00b7 ", words);
  }

  private static void add(Part part, List<String> words) {
    words.add(part.value());
    words.add(part.kind());
    addChannel(part.channel(), words);
  }

  private static void addChannel(String channel, List<String> words) {
    if (!channel.isEmpty()) {
      words.add(Texts.of("channel.name", channel));
    }
  }

  private static String kindKey(Subject subject) {
    if (subject instanceof Subject.OfPin) {
      return "find.pin";
    }
    return subject instanceof Subject.OfSection ? "find.section" : "find.part";
  }

  private void go(Subject subject) {
    results.close();
    field.offer("");
    leave.run();
    session.choose(subject);
  }

  private void enter() {
    Optional<FindResults.Line> chosen = results.chosen();
    if (session.tool() == Tool.TRACE) {
      session.traceLine(field.getText());
      leaveTracing();
    } else if (chosen.isPresent()) {
      chosen.get().go().run();
    } else if (session.tool().takesName()) {
      results.close();
      field.selectAll();
    } else if (field.getText().isBlank()) {
      leave.run();
    } else {
      goAtOnce = true;
      search(field.getText());
    }
  }

  /** A line that was taken gives way to the net's name; one that can't be read stays. */
  private void leaveTracing() {
    boolean refused =
        session.notice().filter(last -> last.kind() == Notice.Kind.REFUSED).isPresent();
    if (!refused) {
      field.offer(session.tracing().name());
      leave.run();
    }
  }

  private void escape() {
    if (results.isOpen()) {
      results.close();
    } else if (!field.getText().isEmpty() && !session.tool().takesName()) {
      field.offer("");
    } else if (expectsNode) {
      leave.run();
    } else {
      session.back();
      leave.run();
    }
  }
}
