package org.relegend.map;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The pins that one conductor joins, as built: nets follow the copper, and a {@link
 * DrawingDiscrepancy} tells where the drawing differs.
 *
 * @param channel the channel it belongs to; empty when shared or unknown
 * @param members sorted by pin
 */
public record Net(
    NetId id, String name, String channel, Potential potential, List<Member> members, String note)
    implements Keyed<NetId> {
  /** One joined pin, with all who stand for it. */
  public record Member(PinRef pin, List<Attestation> evidence) implements Comparable<Member> {
    public Member {
      evidence = List.copyOf(evidence);
    }

    /** The same pin, with one more who stands for it. */
    public Member confirmedBy(Attestation attestation) {
      return new Member(pin, AttestationMerge.union(evidence, List.of(attestation)));
    }

    @Override
    public int compareTo(Member other) {
      return pin.compareTo(other.pin);
    }
  }

  public Net {
    NameRules.checked("net name", name);
    TextRules.line("channel", channel);
    TextRules.note(note);
    List<Member> sorted = new ArrayList<>(members);
    Collections.sort(sorted);
    for (int i = 1; i < sorted.size(); i++) {
      if (sorted.get(i - 1).pin().equals(sorted.get(i).pin())) {
        throw new IllegalArgumentException(
            "net %s has pin %s twice".formatted(name, sorted.get(i).pin()));
      }
    }
    members = Collections.unmodifiableList(sorted);
  }

  public static Net named(NetId id) {
    return new Net(id, id.text(), "", Potential.UNKNOWN, List.of(), "");
  }

  @Override
  public NetId key() {
    return id;
  }

  public List<PinRef> pins() {
    return members.stream().map(Member::pin).toList();
  }

  public Optional<Member> member(PinRef pin) {
    int index = Collections.binarySearch(members, new Member(pin, List.of()));
    return index < 0 ? Optional.empty() : Optional.of(members.get(index));
  }

  public boolean has(PinRef pin) {
    return member(pin).isPresent();
  }

  public Net withName(String changed) {
    return new Net(id, changed, channel, potential, members, note);
  }

  public Net withChannel(String changed) {
    return new Net(id, name, changed, potential, members, note);
  }

  public Net withPotential(Potential changed) {
    return new Net(id, name, channel, changed, members, note);
  }

  public Net withNote(String changed) {
    return new Net(id, name, channel, potential, members, changed);
  }

  public Net withMembers(List<Member> changed) {
    return new Net(id, name, channel, potential, changed, note);
  }

  /** With this pin joined, or with this evidence in the place of what was known of it. */
  public Net withMember(Member added) {
    List<Member> changed = new ArrayList<>(members);
    changed.removeIf(member -> member.pin().equals(added.pin()));
    changed.add(added);
    return withMembers(changed);
  }

  public Net without(PinRef pin) {
    return withMembers(members.stream().filter(member -> !member.pin().equals(pin)).toList());
  }
}
