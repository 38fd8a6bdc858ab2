package org.relegend.viewer.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.map.Attestation;
import org.relegend.map.Evidence;
import org.relegend.map.MapIndex;
import org.relegend.map.Net;
import org.relegend.map.Page;
import org.relegend.map.Part;
import org.relegend.map.Photo;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Subject;

/** Lays out the cards for what was chosen. */
public final class CardStripBuilder {
  /** Around a part, a node of more pins than this (a supply, say) is one card that opens it. */
  static final int FEW_PINS = 12;

  private final MapIndex index;
  private final BestPlaces places;
  private final TwinLookup twins;
  private final SubjectHazards dangers;
  private final ShownPictures desk;

  public CardStripBuilder(MapDocument document, ShownPictures desk) {
    this.index = document.index();
    this.desk = desk;
    places = new BestPlaces(index);
    twins = document.twins();
    dangers = new SubjectHazards(document);
  }

  public CardStrip of(Subject subject) {
    List<CardStrip.Group> groups = new ArrayList<>();
    if (subject instanceof Subject.OfNet net) {
      index.map().net(net.net()).ifPresent(found -> groups.add(node(found)));
    } else if (subject instanceof Subject.OfPin pin) {
      index.netsOf(pin.pin()).forEach(net -> groups.add(node(net)));
      if (groups.isEmpty()) {
        groups.add(alone(subject));
      }
    } else if (subject instanceof Subject.OfPart part) {
      groups.add(alone(subject));
      index.map().part(part.part()).ifPresent(found -> addAround(found, found.pins(), groups));
    } else if (subject instanceof Subject.OfSection section) {
      groups.add(alone(subject));
      index
          .map()
          .part(section.part())
          .ifPresent(part -> addAround(part, pinsOf(part, section.section()), groups));
    }
    return new CardStrip(Optional.of(subject), groups);
  }

  private static List<Pin> pinsOf(Part part, String section) {
    return part.pins().stream()
        .filter(pin -> part.section(section).filter(found -> found.has(pin.number())).isPresent())
        .toList();
  }

  private CardStrip.Group alone(Subject subject) {
    NodeCard card = card(subject, Optional.empty());
    return new CardStrip.Group(Optional.empty(), Optional.empty(), 0, List.of(card));
  }

  private CardStrip.Group node(Net net) {
    List<NodeCard> cards = net.members().stream().map(this::card).toList();
    return new CardStrip.Group(Optional.of(net.id()), Optional.empty(), cards.size(), cards);
  }

  private void addAround(Part part, List<Pin> pins, List<CardStrip.Group> groups) {
    for (Pin pin : pins) {
      PinRef ref = part.ref(pin);
      index.netsOf(ref).forEach(net -> groups.add(around(ref, net)));
    }
  }

  private CardStrip.Group around(PinRef via, Net net) {
    List<NodeCard> cards =
        net.members().size() > FEW_PINS
            ? List.of(card(Subject.of(net.id()), Optional.empty()))
            : net.members().stream()
                .filter(member -> !member.pin().equals(via))
                .map(this::card)
                .toList();
    return new CardStrip.Group(
        Optional.of(net.id()), Optional.of(via), net.members().size(), cards);
  }

  private NodeCard card(Net.Member member) {
    return card(Subject.of(member.pin()), Attestation.best(member.evidence()));
  }

  private NodeCard card(Subject subject, Optional<Evidence> joined) {
    Optional<TwinLookup.Known> known = twins.of(subject);
    Optional<Subject> twin = known.map(TwinLookup.Known::subject);
    Optional<Placement> photo = photo(subject);
    return new NodeCard(
        subject,
        places.of(subject, Page.class, desk.page()),
        photo,
        photo.filter(place -> desk.isOwn(place.picture())).isPresent()
            ? Optional.empty()
            : places.of(subject, Photo.class, desk.photo(), desk::isOwn),
        twin,
        known.flatMap(TwinLookup.Known::follows),
        twin.flatMap(this::photo),
        false,
        joined,
        dangers.around(subject));
  }

  /** On the photo that is shown, else on one of the map, else on one of this unit. */
  private Optional<Placement> photo(Subject subject) {
    return places
        .of(subject, Photo.class, desk.photo(), id -> !desk.isOwn(id) || desk.shows(id))
        .or(() -> places.of(subject, Photo.class, desk.photo()));
  }
}
