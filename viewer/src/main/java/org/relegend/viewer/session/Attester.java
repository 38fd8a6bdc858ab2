package org.relegend.viewer.session;

import java.time.Clock;
import java.time.Instant;
import org.relegend.map.Attestation;
import org.relegend.map.Evidence;

/** Who works here, and on what evidence what they note now rests; remembered until changed. */
public final class Attester {
  private final ChangeNotifier hub;
  private final Clock clock;
  private Evidence evidence = Evidence.SEEN;
  private String author = "";

  public Attester(ChangeNotifier hub, Clock clock) {
    this.hub = hub;
    this.clock = clock;
  }

  public Evidence evidence() {
    return evidence;
  }

  public void setEvidence(Evidence evidence) {
    hub.check();
    this.evidence = evidence;
    hub.moveOn();
    hub.fire(Change.EVIDENCE);
  }

  public String author() {
    return author;
  }

  /** A name or alias that stands beside each placement and join from now on; may be empty. */
  public void setAuthor(String author) {
    hub.check();
    this.author = author;
    hub.fire(Change.EVIDENCE);
  }

  /** When something noted now happens. */
  public Instant now() {
    return clock.instant();
  }

  public Attestation attests() {
    return attests(evidence);
  }

  /** On other evidence than what is in use. */
  public Attestation attests(Evidence known) {
    return new Attestation(known, author, clock.instant());
  }
}
