package org.relegend.viewer.mode.twins;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.relegend.map.ChannelDeviation;
import org.relegend.map.Subject;
import org.relegend.twin.ProposedTwin;
import org.relegend.twin.SeedContradiction;
import org.relegend.twin.TwinAcceptance;
import org.relegend.twin.TwinBasis;
import org.relegend.twin.TwinPredictions;
import org.relegend.twin.TwinSeed;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.RowListPanel;
import org.relegend.viewer.session.DerivedTwins;
import org.relegend.viewer.session.Session;

/** The lists of what follows from twins: pairs and differences, and predicted places. */
public final class TwinListPanel {
  static final String TWINS = "twins";
  static final String GHOSTS = "ghosts";

  /** Rows that are listed: laying out thousands would hold up the keyboard. */
  private static final int MOST = 300;

  private final Session session;
  private final TwinRunner working;
  private final RowListPanel twins;
  private final RowListPanel ghosts;
  private List<TwinRow> rows = List.of();
  private List<TwinPredictions.Prediction> places = List.of();

  /**
   * @param back shows the node strip again
   * @param leave takes the predicted places away and shows the strip
   */
  public TwinListPanel(Session session, TwinRunner working, Runnable back, Runnable leave) {
    this.session = session;
    this.working = working;
    twins = new RowListPanel(TWINS, back);
    twins.onKey("C", row -> onRow(session.room(TwinTool.class)::accept));
    twins.onKey("DELETE", row -> onRow(session.room(TwinTool.class)::reject));
    twins.onKey("D", row -> mark(ChannelDeviation.Cause.DESIGN));
    twins.onKey("F", row -> mark(ChannelDeviation.Cause.FAULT));
    twins.onKey("R", row -> mark(ChannelDeviation.Cause.REPAIR));
    ghosts = new RowListPanel(GHOSTS, leave);
    ghosts.onChoose(this::pick);
    ghosts.onKey("C", row -> onGhost(session.room(PredictedPlaces.class)::accept));
    ghosts.onKey("DELETE", row -> onGhost(session.room(PredictedPlaces.class)::reject));
  }

  public List<RowListPanel> all() {
    return List.of(twins, ghosts);
  }

  public RowListPanel twins() {
    return twins;
  }

  public RowListPanel ghosts() {
    return ghosts;
  }

  private void onRow(Consumer<TwinRow> deed) {
    int chosen = twins.chosen();
    if (chosen >= 0 && chosen < Math.min(MOST, rows.size())) {
      deed.accept(rows.get(chosen));
    }
  }

  private void mark(ChannelDeviation.Cause cause) {
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
    DerivedTwins following = session.document().following();
    rows = session.room(TwinTool.class).rows();
    List<RowListPanel.Row> shown =
        new ArrayList<>(rows.stream().limit(MOST).map(this::row).toList());
    if (rows.size() > MOST) {
      shown.add(
          new RowListPanel.Row(
              Messages.of("list.twins.more"),
              Messages.of("list.twins.more.line", rows.size() - MOST),
              Messages.of("list.twins.more.text"),
              () -> {}));
    }
    twins.show(title(following), hint(following), shown);
  }

  private String title(DerivedTwins following) {
    if (working.isBusy()) {
      return Messages.of("twins.working");
    }
    long pairs = rows.stream().filter(TwinRow.Pair.class::isInstance).count();
    long differences = rows.stream().filter(TwinRow.Differs.class::isInstance).count();
    String count = Messages.of("list.twins.count", pairs, differences);
    return following.isUnasked() ? Messages.of("list.twins.alone", count) : count;
  }

  private String hint(DerivedTwins following) {
    if (!following.problem().isEmpty()) {
      return following.problem();
    }
    if (rows.isEmpty()) {
      return Messages.of(
          session.map().twins().isEmpty() ? "list.twins.none" : "list.twins.nothing");
    }
    return following.contradictions().isEmpty()
        ? Messages.of("list.twins.hint", session.room(TwinTool.class).sure())
        : Messages.of("list.twins.hint.clash");
  }

  private RowListPanel.Row row(TwinRow row) {
    if (row instanceof TwinRow.Clash clash) {
      return row(Messages.of("twins.clash"), clash(clash), clash.why().reason(), row);
    }
    if (row instanceof TwinRow.Differs differs) {
      String mark =
          differs
              .mark()
              .map(cause -> Messages.of("twins.cause." + cause.word()))
              .orElse(Messages.of("twins.unmarked"));
      return row(
          mark,
          differs.difference().text(),
          Messages.of("twins.differs." + differs.difference().aspect().word()),
          row);
    }
    if (row instanceof TwinRow.Alike alike) {
      return row(
          Messages.of("twins.alike"),
          Messages.of("twins.alike.line", names(alike.group().a()), names(alike.group().b())),
          Messages.of("twins.alike.more"),
          row);
    }
    TwinRow.Pair pair = (TwinRow.Pair) row;
    return row(sign(pair), pair(pair.pair()), more(pair.pair()), row);
  }

  private RowListPanel.Row row(String sign, String line, String more, TwinRow row) {
    return new RowListPanel.Row(sign, line, more, () -> session.choose(row.place()));
  }

  private String clash(TwinRow.Clash clash) {
    SeedContradiction why = clash.why();
    String others =
        why.pairs().stream()
            .filter(pair -> !pair.equals(clash.declared()))
            .map(this::pair)
            .collect(Collectors.joining(", "));
    return others.isEmpty()
        ? Messages.of("twins.clash.line", pair(clash.declared()))
        : Messages.of("twins.clash.beside", pair(clash.declared()), others);
  }

  private static String sign(TwinRow.Pair row) {
    if (row.rejected()) {
      return Messages.of("twins.rejected");
    }
    String trust = Messages.of("twins.trust", row.pair().trust());
    return TwinAcceptance.isSure(row.pair()) ? trust : Messages.of("twins.unsure", trust);
  }

  private String pair(ProposedTwin pair) {
    return Messages.of("twins.pair", name(pair.a()), name(pair.b()));
  }

  private String pair(TwinSeed pair) {
    return Messages.of("twins.pair", name(pair.a()), name(pair.b()));
  }

  private static String more(ProposedTwin pair) {
    return Messages.of("twins.kind." + kind(pair.a())) + "  \u00b7  " + basis(pair.basis());
  }

  private static String basis(TwinBasis basis) {
    return Messages.of("twins.basis." + Messages.word(basis));
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
    List<RowListPanel.Row> shown = new ArrayList<>();
    for (TwinPredictions.Prediction place : places) {
      shown.add(
          new RowListPanel.Row(
              name(place.part()),
              Messages.of("ghosts.line", name(place.twin()), Math.round(place.radius95())),
              Messages.of(place.correlation() > 0 ? "ghosts.seen" : "ghosts.unseen"),
              () -> session.room(PredictedPlaces.class).open(place)));
    }
    String line =
        session
            .room(PredictedPlaces.class)
            .text()
            .map(text -> text.isEmpty() ? Messages.of("list.ghosts.none") : text)
            .orElse(Messages.of("ghosts.working"));
    String why =
        session.room(PredictedPlaces.class).weak() > 0 ? Messages.of("ghosts.weak", line) : line;
    String hint = shown.isEmpty() ? why : line + "  " + Messages.of("list.ghosts.hint");
    ghosts.show(Messages.of("list.ghosts.count", shown.size()), hint, shown);
    session.room(PredictedPlaces.class).chosen().map(places::indexOf).ifPresent(ghosts::choose);
  }
}
