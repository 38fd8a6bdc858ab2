package org.relegend.viewer.mode.twins;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.relegend.map.Deviation;
import org.relegend.map.Subject;
import org.relegend.twin.Accepting;
import org.relegend.twin.Basis;
import org.relegend.twin.Contradiction;
import org.relegend.twin.Predictions;
import org.relegend.twin.ProposedTwin;
import org.relegend.twin.Seed;
import org.relegend.viewer.control.RowList;
import org.relegend.viewer.control.Texts;
import org.relegend.viewer.session.Following;
import org.relegend.viewer.session.Session;

/** The lists of what follows from twins: pairs and differences, and predicted places. */
public final class TwinListPanel {
  static final String TWINS = "twins";
  static final String GHOSTS = "ghosts";

  /** Rows that are listed: laying out thousands would hold up the keyboard. */
  private static final int MOST = 300;

  private final Session session;
  private final TwinRunner working;
  private final RowList twins;
  private final RowList ghosts;
  private List<TwinRow> rows = List.of();
  private List<Predictions.Prediction> places = List.of();

  /**
   * @param back shows the node strip again
   * @param leave takes the predicted places away and shows the strip
   */
  public TwinListPanel(Session session, TwinRunner working, Runnable back, Runnable leave) {
    this.session = session;
    this.working = working;
    twins = new RowList(TWINS, back);
    twins.onKey("C", row -> onRow(session.room(TwinTool.class)::accept));
    twins.onKey("DELETE", row -> onRow(session.room(TwinTool.class)::reject));
    twins.onKey("D", row -> mark(Deviation.Cause.DESIGN));
    twins.onKey("F", row -> mark(Deviation.Cause.FAULT));
    twins.onKey("R", row -> mark(Deviation.Cause.REPAIR));
    ghosts = new RowList(GHOSTS, leave);
    ghosts.onChoose(this::pick);
    ghosts.onKey("C", row -> onGhost(session.room(PredictedPlaces.class)::accept));
    ghosts.onKey("DELETE", row -> onGhost(session.room(PredictedPlaces.class)::reject));
  }

  public List<RowList> all() {
    return List.of(twins, ghosts);
  }

  public RowList twins() {
    return twins;
  }

  public RowList ghosts() {
    return ghosts;
  }

  private void onRow(Consumer<TwinRow> deed) {
    int chosen = twins.chosen();
    if (chosen >= 0 && chosen < Math.min(MOST, rows.size())) {
      deed.accept(rows.get(chosen));
    }
  }

  private void mark(Deviation.Cause cause) {
    onRow(row -> session.room(TwinTool.class).mark(row, cause));
  }

  private void onGhost(Runnable deed) {
    pick(ghosts.chosen());
    deed.run();
  }

  private void pick(int row) {
    if (row >= 0 && row < places.size()) {
      session.room(PredictedPlaces.class).pick(places.get(row));
    }
  }

  /** Shows what follows as it is known now. */
  public void settleTwins() {
    Following following = session.document().following();
    rows = session.room(TwinTool.class).rows();
    List<RowList.Row> shown = new ArrayList<>(rows.stream().limit(MOST).map(this::row).toList());
    if (rows.size() > MOST) {
      shown.add(
          new RowList.Row(
              Texts.of("list.twins.more"),
              Texts.of("list.twins.more.line", rows.size() - MOST),
              Texts.of("list.twins.more.text"),
              () -> {}));
    }
    twins.show(title(following), hint(following), shown);
  }

  private String title(Following following) {
    if (working.isBusy()) {
      return Texts.of("twins.working");
    }
    long pairs = rows.stream().filter(TwinRow.Pair.class::isInstance).count();
    long differences = rows.stream().filter(TwinRow.Differs.class::isInstance).count();
    String count = Texts.of("list.twins.count", pairs, differences);
    return following.isUnasked() ? Texts.of("list.twins.alone", count) : count;
  }

  private String hint(Following following) {
    if (!following.problem().isEmpty()) {
      return following.problem();
    }
    if (rows.isEmpty()) {
      return Texts.of(session.map().twins().isEmpty() ? "list.twins.none" : "list.twins.nothing");
    }
    return following.contradictions().isEmpty()
        ? Texts.of("list.twins.hint", session.room(TwinTool.class).sure())
        : Texts.of("list.twins.hint.clash");
  }

  private RowList.Row row(TwinRow row) {
    if (row instanceof TwinRow.Clash clash) {
      return row(Texts.of("twins.clash"), clash(clash), clash.why().reason(), row);
    }
    if (row instanceof TwinRow.Differs differs) {
      String mark =
          differs
              .mark()
              .map(cause -> Texts.of("twins.cause." + cause.word()))
              .orElse(Texts.of("twins.unmarked"));
      return row(
          mark,
          differs.difference().told(),
          Texts.of("twins.differs." + differs.difference().aspect().word()),
          row);
    }
    if (row instanceof TwinRow.Alike alike) {
      return row(
          Texts.of("twins.alike"),
          Texts.of("twins.alike.line", names(alike.group().a()), names(alike.group().b())),
          Texts.of("twins.alike.more"),
          row);
    }
    TwinRow.Pair pair = (TwinRow.Pair) row;
    return row(sign(pair), pair(pair.pair()), more(pair.pair()), row);
  }

  private RowList.Row row(String sign, String line, String more, TwinRow row) {
    return new RowList.Row(sign, line, more, () -> session.choose(row.place()));
  }

  private String clash(TwinRow.Clash clash) {
    Contradiction why = clash.why();
    String others =
        why.pairs().stream()
            .filter(pair -> !pair.equals(clash.said()))
            .map(this::pair)
            .collect(Collectors.joining(", "));
    return others.isEmpty()
        ? Texts.of("twins.clash.line", pair(clash.said()))
        : Texts.of("twins.clash.beside", pair(clash.said()), others);
  }

  private static String sign(TwinRow.Pair row) {
    if (row.rejected()) {
      return Texts.of("twins.rejected");
    }
    String trust = Texts.of("twins.trust", row.pair().trust());
    return Accepting.isSure(row.pair()) ? trust : Texts.of("twins.unsure", trust);
  }

  private String pair(ProposedTwin pair) {
    return Texts.of("twins.pair", name(pair.a()), name(pair.b()));
  }

  private String pair(Seed pair) {
    return Texts.of("twins.pair", name(pair.a()), name(pair.b()));
  }

  private static String more(ProposedTwin pair) {
    return Texts.of("twins.kind." + kind(pair.a())) + "  \u00b7  " + basis(pair.basis());
  }

  private static String basis(Basis basis) {
    return Texts.of("twins.basis." + Texts.word(basis));
  }

  private static String kind(Subject subject) {
    if (subject instanceof Subject.OfNet) {
      return "net";
    }
    return subject instanceof Subject.OfSection ? "section" : "part";
  }

  private String names(List<Subject> subjects) {
    return subjects.stream().map(this::name).collect(Collectors.joining(", "));
  }

  private String name(Subject subject) {
    return session.map().nameOf(subject);
  }

  /** Shows the predicted places as they are now; the chosen one is chosen in the list too. */
  public void settleGhosts() {
    places = session.room(PredictedPlaces.class).all();
    List<RowList.Row> shown = new ArrayList<>();
    for (Predictions.Prediction place : places) {
      shown.add(
          new RowList.Row(
              name(place.part()),
              Texts.of("ghosts.line", name(place.twin()), Math.round(place.radius95())),
              Texts.of(place.correlation() > 0 ? "ghosts.seen" : "ghosts.unseen"),
              () -> session.room(PredictedPlaces.class).open(place)));
    }
    String told =
        session
            .room(PredictedPlaces.class)
            .told()
            .map(text -> text.isEmpty() ? Texts.of("list.ghosts.none") : text)
            .orElse(Texts.of("ghosts.working"));
    String why =
        session.room(PredictedPlaces.class).weak() > 0 ? Texts.of("ghosts.weak", told) : told;
    String hint = shown.isEmpty() ? why : told + "  " + Texts.of("list.ghosts.hint");
    ghosts.show(Texts.of("list.ghosts.count", shown.size()), hint, shown);
    session.room(PredictedPlaces.class).chosen().map(places::indexOf).ifPresent(ghosts::choose);
  }
}
