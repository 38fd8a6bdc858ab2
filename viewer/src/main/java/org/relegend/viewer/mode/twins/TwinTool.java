package org.relegend.viewer.mode.twins;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.ChannelDeviation;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.PinRef;
import org.relegend.map.Section;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;
import org.relegend.twin.ProposedTwin;
import org.relegend.twin.SeedContradiction;
import org.relegend.twin.TwinAcceptance;
import org.relegend.twin.TwinDifference;
import org.relegend.twin.TwinGroup;
import org.relegend.twin.TwinSeed;
import org.relegend.viewer.session.Attester;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.DerivedTwins;
import org.relegend.viewer.session.MapDocument;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Question;
import org.relegend.viewer.session.QuestionQueue;
import org.relegend.viewer.session.Room;
import org.relegend.viewer.session.Selection;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SubjectQueries;
import org.relegend.viewer.session.TypedName;

/**
 * Saying which is whose twin, and taking up or turning down what follows. What follows is worked
 * out elsewhere and handed in by {@link #take}.
 */
public final class TwinTool implements Room {
  /** What is the twin of this part, section, pin or net? */
  public record WhichTwin(Subject subject) implements Question {}

  private static final Comparator<ProposedTwin> SUREST_FIRST =
      Comparator.comparing((ProposedTwin pair) -> !TwinAcceptance.isSure(pair))
          .thenComparing(pair -> pair.a() instanceof Subject.OfNet)
          .thenComparing(pair -> -pair.trust())
          .thenComparing(ProposedTwin::a);

  private final MapDocument document;
  private final Selection selection;
  private final Attester hand;
  private final ChangeNotifier hub;
  private final QuestionQueue questions;
  private final Set<TwinPair.Key> rejected = new HashSet<>();
  private @Nullable TwinSeed lastDeclared;
  private boolean alone;

  public TwinTool(Session session) {
    this.document = session.document();
    this.selection = session.selection();
    this.hand = session.hand();
    this.hub = session.hub();
    this.questions = session.questions();
  }

  /** Asks for the twin of what the eye is on. */
  public void ask() {
    hub.check();
    selection
        .focus()
        .ifPresentOrElse(
            focus -> questions.ask(new WhichTwin(focus)),
            () -> hub.say(Notice.Kind.NOTHING_CHOSEN));
  }

  /** Its twin is what was typed; where that names nothing fit, the question stays. */
  public void answer(WhichTwin question, String typed) {
    hub.check();
    Optional<Subject> named = new TypedName(document.index()).known(typed);
    if (named.isEmpty()) {
      hub.say(Notice.Kind.NOT_FOUND, typed);
      return;
    }
    try {
      TwinPair pair = pair(question.subject(), named.get());
      if (document.apply(MapTables.TWINS.put(pair))) {
        lastDeclared = new TwinSeed(pair.a(), pair.b());
        rejected.remove(pair.key());
        questions.done();
        hub.say(Notice.Kind.TWINS_SAID, name(pair.a()), name(pair.b()));
        hub.fire(Change.TWINS_SAID);
      }
    } catch (IllegalArgumentException unfit) {
      hub.say(Notice.Kind.TWINS_UNLIKE, name(question.subject()), name(named.get()));
    }
  }

  /** A name of a part, where a pin of it was chosen, means the parts; and the like. */
  private TwinPair pair(Subject one, Subject named) {
    return new TwinPair(like(named, one), named, List.of(hand.attests()));
  }

  private Subject like(Subject named, Subject one) {
    if (named instanceof Subject.OfPart) {
      return SubjectQueries.partOf(one).map(Subject::of).orElse(one);
    }
    return named instanceof Subject.OfSection && one instanceof Subject.OfPin pin
        ? section(pin.pin()).orElse(one)
        : one;
  }

  private Optional<Subject> section(PinRef pin) {
    return document.map().part(pin.part()).stream()
        .flatMap(part -> part.sectionsOf(pin.pin()).stream())
        .map(Section::name)
        .<Subject>map(section -> new Subject.OfSection(pin.part(), section))
        .findFirst();
  }

  /** The pair said last, against which others stand. */
  public Optional<TwinSeed> lastDeclared() {
    return Optional.ofNullable(lastDeclared);
  }

  /** Whether channels are to be looked for where no twins are known at all. */
  public boolean alone() {
    return alone;
  }

  /** The technician wants to see what follows, also where nothing was said yet. */
  public void wanted() {
    hub.check();
    alone = true;
  }

  /** Takes in what was worked out of a map; dropped where its circuit or twins changed since. */
  public void take(BoardMap of, DerivedTwins following) {
    hub.check();
    if (isOfNow(of)) {
      document.follow(following.rejecting(rejected));
    }
  }

  /** Whether what is worked out of that map holds for the map as it is now. */
  public boolean isOfNow(BoardMap map) {
    BoardMap now = document.map();
    return now.parts().equals(map.parts())
        && now.nets().equals(map.nets())
        && now.channels().equals(map.channels())
        && now.twins().equals(map.twins());
  }

  /**
   * What is to be looked at: contradictions, differences, open choices, then pairs not kept yet.
   */
  public List<TwinRow> rows() {
    DerivedTwins following = document.following();
    List<TwinRow> rows = new ArrayList<>();
    for (SeedContradiction why : following.contradictions()) {
      why.pairs().forEach(pair -> rows.add(new TwinRow.Clash(pair, why)));
    }
    for (TwinDifference difference : following.differences()) {
      rows.add(
          new TwinRow.Differs(
              difference,
              document.map().deviations().find(difference.key()).map(ChannelDeviation::cause)));
    }
    for (TwinGroup group : following.groups()) {
      rows.add(new TwinRow.Alike(group));
    }
    proposed().stream()
        .sorted(Comparator.comparing(following::isRejected).thenComparing(SUREST_FIRST))
        .forEach(pair -> rows.add(new TwinRow.Pair(pair, following.isRejected(pair))));
    return rows;
  }

  /** Pairs that the map could keep and doesn't. */
  private List<ProposedTwin> proposed() {
    BoardMap map = document.map();
    return document.following().pairs().stream()
        .filter(pair -> !map.twins().has(DerivedTwins.key(pair)))
        .filter(pair -> TwinAcceptance.isHeldBy(map, pair))
        .toList();
  }

  /** How many pairs {@link #acceptAll} would keep. */
  public int sure() {
    return edits().size();
  }

  private List<Edit> edits() {
    List<ProposedTwin> wanted =
        document.following().pairs().stream()
            .filter(pair -> !document.following().isRejected(pair))
            .toList();
    return TwinAcceptance.ofAll(document.map(), wanted, hand.attests(Evidence.MATCHED));
  }

  /** Keeps all pairs that are sure, as one edit; nothing as long as there are contradictions. */
  public void acceptAll() {
    hub.check();
    List<Edit> edits = edits();
    Optional<SeedContradiction> clash = document.following().contradictions().stream().findFirst();
    if (clash.isPresent()) {
      TwinSeed first = clash.get().pairs().get(0);
      hub.say(Notice.Kind.TWINS_CLASH, name(first.a()), name(first.b()), clash.get().reason());
    } else if (edits.isEmpty()) {
      hub.say(Notice.Kind.NOTHING_PROPOSED);
    } else if (document.apply(new EditGroup("Accept %d twins".formatted(edits.size()), edits))) {
      hub.say(Notice.Kind.TWINS_ACCEPTED, edits.size());
    }
  }

  /** Keeps the pair of a row, also one that isn't sure. */
  public void accept(TwinRow row) {
    hub.check();
    if (!(row instanceof TwinRow.Pair proposed)) {
      hub.say(Notice.Kind.NOTHING_PROPOSED);
      return;
    }
    ProposedTwin pair = proposed.pair();
    rejected.remove(DerivedTwins.key(pair));
    if (document.apply(TwinAcceptance.of(pair, hand.attests(Evidence.MATCHED)))) {
      hub.say(Notice.Kind.TWINS_SAID, name(pair.a()), name(pair.b()));
    }
  }

  /**
   * Turns a row down: a proposed pair is not used again in this sitting, one that people said is no
   * longer said, the mark on a difference goes.
   */
  public void reject(TwinRow row) {
    hub.check();
    if (row instanceof TwinRow.Pair proposed) {
      rejected.add(DerivedTwins.key(proposed.pair()));
      document.follow(document.following().rejecting(rejected));
      hub.say(Notice.Kind.TWINS_REJECTED, name(proposed.pair().a()), name(proposed.pair().b()));
    } else if (row instanceof TwinRow.Clash clash) {
      TwinPair pair =
          new TwinPair(clash.declared().a(), clash.declared().b(), List.of(hand.attests()));
      document.apply(MapTables.TWINS.remove(pair.key()));
    } else if (row instanceof TwinRow.Differs differs && differs.mark().isPresent()) {
      document.apply(MapTables.DEVIATIONS.remove(differs.difference().key()));
    } else {
      hub.say(Notice.Kind.NOTHING_PROPOSED);
    }
  }

  /** Turns all proposed pairs down. */
  public void rejectAll() {
    hub.check();
    List<ProposedTwin> all = proposed();
    if (all.isEmpty()) {
      hub.say(Notice.Kind.NOTHING_PROPOSED);
      return;
    }
    all.forEach(pair -> rejected.add(DerivedTwins.key(pair)));
    document.follow(document.following().rejecting(rejected));
    hub.say(Notice.Kind.ALL_REJECTED, all.size());
  }

  /** Says why the channels differ in a row. */
  public void mark(TwinRow row, ChannelDeviation.Cause cause) {
    hub.check();
    if (row instanceof TwinRow.Differs differs) {
      document.apply(TwinAcceptance.mark(differs.difference(), cause, hand.attests()));
    } else {
      hub.say(Notice.Kind.NO_DIFFERENCE);
    }
  }

  private String name(Subject subject) {
    return document.map().nameOf(subject);
  }
}
