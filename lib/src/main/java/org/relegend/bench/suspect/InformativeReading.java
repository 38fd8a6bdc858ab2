package org.relegend.bench.suspect;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.relegend.bench.Instrument;
import org.relegend.bench.rule.NetVoltage;
import org.relegend.bench.rule.ProbeLoad;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;

/**
 * The voltage not yet read that tells most about which part it is: the mutual information of parts
 * and reading (Lindley, Annals of Mathematical Statistics 27, 1956), in bits.
 *
 * @param bits expected
 * @param why in a sentence
 */
record InformativeReading(NetId net, PinRef pin, double bits, String why) {
  /** Below this a reading isn't worth its trouble. */
  static final double WORTH_BITS = 0.05;

  /** So many bits an easy place is preferred by. */
  private static final double EASE = 0.05;

  /** Faults below this share of all are left out of the sum. */
  private static final double SMALL = 5e-4;

  private static final int MOST = 80;

  /** Five points of a normal distribution, each with the same probability. */
  private static final double[] POINTS = {-1.28, -0.52, 0, 0.52, 1.28};

  /** Of all nets that may be probed; empty where none tells anything. */
  static Optional<InformativeReading> of(
      UnitReadings unit, FaultPosterior posterior, ProbePoints places) {
    InformativeReading best = null;
    double most = WORTH_BITS;
    for (Net net : unit.map().nets()) {
      Optional<InformativeReading> one = at(unit, posterior, places, net.id());
      if (one.isPresent()) {
        double worth = one.get().bits() - (hard(unit, places, one.get()) ? EASE : 0);
        if (worth > most) {
          most = worth;
          best = one.get();
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean hard(UnitReadings unit, ProbePoints places, InformativeReading one) {
    return places.hard(one.pin())
        || ProbeLoad.of(unit, one.net()).fragileFor(Instrument.DIGITAL_METER);
  }

  private static Optional<InformativeReading> at(
      UnitReadings unit, FaultPosterior posterior, ProbePoints places, NetId net) {
    boolean known = posterior.solved().mapped().netlist().known().containsKey(net.text());
    if (known || unit.reading(net).isPresent()) {
      return Optional.empty();
    }
    List<Prediction> predictions = predictions(posterior, net);
    double bits = bits(predictions);
    if (bits < WORTH_BITS) {
      return Optional.empty();
    }
    return places
        .pin(net)
        .map(pin -> new InformativeReading(net, pin, bits, why(unit, predictions, bits)));
  }

  private record Prediction(PartId part, double share, double volts, double sigma) {
    double density(double x) {
      double z = (x - volts) / sigma;
      return share * Math.exp(-z * z / 2) / sigma;
    }
  }

  private static List<Prediction> predictions(FaultPosterior posterior, NetId net) {
    List<Prediction> predictions = new ArrayList<>();
    double sigma = posterior.sigma(net);
    double healthy = posterior.solved().book().healthy().volts(net.text()).orElse(0);
    for (FaultPosterior.Weighed fault : posterior.faults()) {
      if (fault.share() < SMALL || predictions.size() == MOST) {
        break;
      }
      posterior
          .predicted(fault, net, Instrument.DIGITAL_METER.ohms())
          .ifPresent(
              volts ->
                  predictions.add(
                      new Prediction(
                          fault.part(),
                          fault.share(),
                          volts,
                          Math.hypot(sigma, Observation.CHANGE_ERROR * (volts - healthy)))));
    }
    return predictions;
  }

  private static double bits(List<Prediction> predictions) {
    double whole = predictions.stream().mapToDouble(Prediction::share).sum();
    Map<PartId, Double> shares = new HashMap<>();
    predictions.forEach(one -> shares.merge(one.part(), one.share(), Double::sum));
    double sum = 0;
    for (Prediction one : predictions) {
      for (double point : POINTS) {
        double x = one.volts() + point * one.sigma();
        double all = 0;
        double same = 0;
        for (Prediction other : predictions) {
          double density = other.density(x);
          all += density;
          same += other.part().equals(one.part()) ? density : 0;
        }
        double prior = shares.getOrDefault(one.part(), 0.0) / whole;
        sum += one.share() / whole / POINTS.length * Math.log(same / all / prior);
      }
    }
    return sum / Math.log(2);
  }

  private static String why(UnitReadings unit, List<Prediction> predictions, double bits) {
    Prediction first = predictions.get(0);
    Prediction other = first;
    double most = 0;
    for (Prediction one : predictions) {
      double apart = Math.abs(one.volts() - first.volts()) / Math.hypot(one.sigma(), first.sigma());
      if (!one.part().equals(first.part()) && one.share() * Math.min(apart, 3) > most) {
        most = one.share() * Math.min(apart, 3);
        other = one;
      }
    }
    String text =
        other.equals(first)
            ? "tells most of what is left"
            : "tells most of what is left: %s if it is %s, %s if it is %s"
                .formatted(
                    NetVoltage.text(first.volts()),
                    unit.name(first.part()),
                    NetVoltage.text(other.volts()),
                    unit.name(other.part()));
    return text + String.format(java.util.Locale.ROOT, " (%.1f bits)", bits);
  }
}
