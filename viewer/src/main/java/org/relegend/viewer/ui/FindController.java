package org.relegend.viewer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.Subject;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.session.MapSearch;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SubjectQueries;
import org.relegend.viewer.session.TypedText;
import org.relegend.viewer.work.LatestJob;
import org.relegend.viewer.work.TaskRunner;

/**
 * Makes the find field do what the tool in hand needs: find as one types, complete the name to be
 * placed, or take a line of a trace. Searching runs elsewhere; what comes late is dropped.
 */
final class FindController {
  private static final int SHOWN = 12;

  private final Session session;
  private final FindField field;
  private final FindResults results;
  private final Runnable leave;
  private @Nullable MapSearch finder;
  private @Nullable BoardMap searched;
  private final LatestJob latest;
  private final Function<Mode, String> hint;
  private boolean goAtOnce;
  private boolean expectsNode;

  /**
   * @param hint key of what the field hints at, in each mode
   * @param leave gives the keyboard to where one goes on after a find
   */
  FindController(
      Session session,
      TaskRunner jobs,
      FindField field,
      Function<Mode, String> hint,
      Runnable leave) {
    this.session = session;
    latest = new LatestJob(jobs);
    this.hint = hint;
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
            if (session.isAtRest() && !event.isTemporary()) {
              field.offer("");
            }
          }
        });
    refresh();
  }

  /** A tool was taken in hand: what was typed for another gives way to what this one offers. */
  void takeUp() {
    results.close();
    field.offer(session.mode().typedText().map(TypedText::text).orElse(""));
    refresh();
  }

  /** After a reading: the next node's name, or Esc back to commands; what is chosen stays. */
  void expectNode() {
    expectNode(true);
  }

  private void expectNode(boolean expected) {
    expectsNode = expected;
    refresh();
  }

  boolean expectsNode() {
    return expectsNode;
  }

  /** Takes up the tool in hand, and the name that it offers. */
  void refresh() {
    boolean next = expectsNode && session.isAtRest();
    field.setHint(Messages.of(next ? "find.next.hint" : hint.apply(session.mode())));
    String offered = session.mode().typedText().map(TypedText::text).orElse("");
    if (held().isPresent()) {
      if (!field.getText().equals(offered)) {
        field.offer(offered);
      }
    } else if (!field.isFocusOwner()) {
      field.offer(offered);
    }
  }

  /** The text of the current mode, where each key goes there. */
  private Optional<TypedText> held() {
    return session.mode().typedText().filter(TypedText::holdsKeyboard);
  }

  private void typed(String text) {
    goAtOnce = false;
    Optional<TypedText> own = session.mode().typedText();
    own.ifPresent(taking -> taking.type(text));
    if (held().isPresent()) {
      offerCompletions(held().get(), text);
    } else if (own.isPresent()) {
      results.close();
    } else {
      search(text);
    }
  }

  private void offerCompletions(TypedText own, String text) {
    List<FindResults.Line> lines = new ArrayList<>();
    for (String name : own.completions(text)) {
      lines.add(new FindResults.Line(name, "", () -> complete(own, name)));
    }
    if (text.isBlank() || lines.isEmpty()) {
      results.close();
    } else {
      results.show(lines, "");
    }
  }

  private void complete(TypedText own, String name) {
    own.type(name);
    field.offer(name);
    results.close();
  }

  private void search(String text) {
    latest.cancel();
    if (text.isBlank()) {
      results.close();
      return;
    }
    BoardMap map = session.map();
    MapSearch known = map.equals(searched) ? finder : null;
    latest.run(
        text,
        watch -> {
          MapSearch searching = known == null ? new MapSearch(map) : known;
          return new Searched(searching, searching.find(text, SHOWN));
        },
        found -> show(text, map, found),
        problem -> results.close());
  }

  private record Searched(MapSearch finder, List<MapSearch.Found> found) {}

  private void show(String text, BoardMap map, Searched result) {
    finder = result.finder();
    searched = map;
    if (!field.getText().equals(text) || held().isPresent()) {
      return;
    }
    List<FindResults.Line> lines = result.found().stream().map(this::line).toList();
    if (goAtOnce && !lines.isEmpty()) {
      lines.get(0).go().run();
    } else {
      results.show(lines, Messages.of("find.none", text));
    }
  }

  private FindResults.Line line(MapSearch.Found found) {
    String name = session.map().nameOf(found.subject());
    return new FindResults.Line(name, detail(found), () -> go(found.subject()));
  }

  private String detail(MapSearch.Found found) {
    List<String> words = new ArrayList<>();
    Subject subject = found.subject();
    if (subject instanceof Subject.OfNet net) {
      int pins = session.map().net(net.net()).map(Net::members).map(List::size).orElse(0);
      words.add(Messages.of("find.net", pins));
      session.map().net(net.net()).ifPresent(node -> addChannel(node.channel(), words));
    } else {
      words.add(Messages.of(kindKey(subject)));
      SubjectQueries.partOf(subject)
          .flatMap(session.map()::part)
          .ifPresent(part -> add(part, words));
    }
    switch (found.fit()) {
      case DRAWN_NAME -> words.add(Messages.of("find.drawn", found.matched()));
      case NOTE -> words.add(Messages.of("find.note", found.matched()));
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
      words.add(Messages.of("channel.name", channel));
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
    Optional<TypedText> own = session.mode().typedText();
    if (own.filter(taking -> taking.enter(field.getText())).isPresent()) {
      leaveTaken();
    } else if (chosen.isPresent()) {
      chosen.get().go().run();
    } else if (held().isPresent()) {
      results.close();
      field.selectAll();
    } else if (field.getText().isBlank()) {
      leave.run();
    } else {
      goAtOnce = true;
      search(field.getText());
    }
  }

  /** A line that was taken gives way to what is offered next; one that can't be read stays. */
  private void leaveTaken() {
    boolean refused =
        session.notice().filter(last -> last.kind() == Notice.Kind.REFUSED).isPresent();
    if (!refused) {
      field.offer(session.mode().typedText().map(TypedText::text).orElse(""));
      leave.run();
    }
  }

  private void escape() {
    if (results.isOpen()) {
      results.close();
    } else if (!field.getText().isEmpty() && held().isEmpty()) {
      field.offer("");
    } else if (expectsNode) {
      leave.run();
    } else {
      session.back();
      leave.run();
    }
  }
}
