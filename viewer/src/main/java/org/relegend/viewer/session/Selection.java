package org.relegend.viewer.session;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.Placement;
import org.relegend.map.Subject;

/** What is chosen: one subject with its strip of cards, and any number of marked placements. */
public final class Selection {
  private final MapDocument document;
  private final ShownPictures desk;
  private final HazardGate gate;
  private final ChangeNotifier hub;
  private Set<Placement.Key> marked = Set.of();
  private @Nullable Subject subject;
  private CardStrip strip = CardStrip.EMPTY;
  private Set<Subject> joined = Set.of();
  private int cursor;

  public Selection(MapDocument document, ShownPictures desk, HazardGate gate, ChangeNotifier hub) {
    this.document = document;
    this.desk = desk;
    this.gate = gate;
    this.hub = hub;
  }

  public Optional<Subject> subject() {
    return Optional.ofNullable(subject);
  }

  /** The placements that the next action is about: to drag, take away or confirm. */
  public Set<Placement.Key> marked() {
    return marked;
  }

  public CardStrip strip() {
    return strip;
  }

  /** Everything joined at the chosen node, to be marked on both pictures: pins, and their parts. */
  public Set<Subject> joined() {
    return joined;
  }

  /** Number of the card walked to, from 0; 0 also in an empty strip. */
  public int cursor() {
    return cursor;
  }

  public Optional<NodeCard> card() {
    List<NodeCard> cards = strip.cards();
    return cursor < cards.size() ? Optional.of(cards.get(cursor)) : Optional.empty();
  }

  /** What the eye is on: the card walked to, else what was chosen. */
  public Optional<Subject> focus() {
    return card().map(NodeCard::subject).or(this::subject);
  }

  public void choose(Subject chosen, Collection<Placement.Key> marks) {
    subject = chosen;
    marked = Set.copyOf(marks);
    lay();
    cursor = startOf(chosen);
    hub.fire(Change.CHOICE);
  }

  public void mark(Collection<Placement.Key> marks) {
    marked = Set.copyOf(marks);
    hub.fire(Change.CHOICE);
  }

  public void toggle(Placement.Key mark) {
    Set<Placement.Key> changed = new LinkedHashSet<>(marked);
    if (!changed.remove(mark)) {
      changed.add(mark);
    }
    mark(changed);
  }

  public void clear() {
    subject = null;
    marked = Set.of();
    lay();
    cursor = 0;
    hub.fire(Change.CHOICE);
  }

  /** Walks to a card. */
  public void walkTo(int card) {
    cursor = Math.max(0, Math.min(strip.cards().size() - 1, card));
    hub.fire(Change.CURSOR);
  }

  /** Lays the cards anew, after the map or the desk changed; what is gone is no longer chosen. */
  public void update() {
    BoardMap map = document.map();
    if (subject != null && !SubjectQueries.isIn(map, subject)) {
      subject = null;
    }
    marked = Set.copyOf(marked.stream().filter(document.seen().placements()::has).toList());
    Optional<Subject> was = card().map(NodeCard::subject);
    lay();
    List<Subject> now = strip.cards().stream().map(NodeCard::subject).toList();
    int kept = was.map(now::indexOf).orElse(-1);
    cursor = kept >= 0 ? kept : Math.max(0, Math.min(now.size() - 1, cursor));
    hub.fire(Change.CHOICE);
  }

  /** Lays the cards anew, where something is known now that wasn't: told only if they differ. */
  public void refresh() {
    CardStrip before = strip;
    lay();
    if (!strip.equals(before)) {
      hub.fire(Change.CHOICE);
    }
  }

  private int startOf(Subject chosen) {
    List<Subject> subjects = strip.cards().stream().map(NodeCard::subject).toList();
    return Math.max(0, subjects.indexOf(chosen));
  }

  /** Places of twins in zones whose caution wasn't read yet are held back. */
  private CardStrip held(CardStrip made) {
    return new CardStrip(
        made.subject(),
        made.groups().stream()
            .map(group -> group.with(group.cards().stream().map(this::held).toList()))
            .toList());
  }

  private NodeCard held(NodeCard card) {
    boolean open =
        card.twinPhoto().isEmpty()
            || card.twin()
                .filter(twin -> !gate.isOpen(Set.copyOf(new SubjectHazards(document).around(twin))))
                .isEmpty();
    return open ? card : card.holding();
  }

  private void lay() {
    strip =
        subject == null ? CardStrip.EMPTY : held(new CardStripBuilder(document, desk).of(subject));
    Set<Subject> all = new LinkedHashSet<>();
    for (NodeCard card : strip.cards()) {
      all.add(card.subject());
      if (card.subject() instanceof Subject.OfPin pin) {
        all.add(Subject.of(pin.pin().part()));
      }
    }
    strip.groups().forEach(group -> group.net().ifPresent(net -> all.add(Subject.of(net))));
    joined = Set.copyOf(all);
  }
}
