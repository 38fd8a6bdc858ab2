package org.relegend.bench.suspect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.circuit.Kind;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.solve.Fault;
import org.relegend.solve.OperatingPoint;
import org.relegend.solve.PredictedFault;

/**
 * How likely each solved fault is after the readings, by Bayes' rule: its prior times the
 * likelihood of every reading. A fault that direct voltages don't show and one that nobody thought
 * of, or a wrong map, are always among the hypotheses.
 */
final class FaultPosterior {
  /** Prior share of "none of these, or the map is wrong". */
  static final double NONE = 0.03;

  /** Model error that both channels have alike: of the node's volts, and of the span. */
  private static final double MODEL_FRACTION = 0.05;

  private static final double MODEL_SPAN = 0.01;

  /** What a drawing's volts hold to, as one standard deviation. */
  private static final double DRAWN = UnitReadings.DRAWN_FRACTION / 2;

  /** Half a per cent and 5 mV are what a meter is off by at most. */
  private static final double METER_FRACTION = 0.003;

  private static final double METER_VOLTS = 0.003;

  /** Nodes aren't independent of one another: together they count somewhat less than alone. */
  private static final double TEMPER = 0.8;

  /** A fault that moves no reading by more standard deviations than this isn't seen. */
  private static final double SILENT = 1;

  /** One fault with its share of all that is possible. */
  static final class Weighed {
    private final PredictedFault predicted;
    private final double[] volts;
    private final double share;

    Weighed(PredictedFault predicted, double[] volts, double share) {
      this.predicted = predicted;
      this.volts = volts;
      this.share = share;
    }

    PredictedFault predicted() {
      return predicted;
    }

    /** Of the nodes that were read, as the meter shows them. */
    double[] volts() {
      return volts;
    }

    double share() {
      return share;
    }

    Fault fault() {
      return predicted.fault();
    }

    PartId part() {
      return new PartId(predicted.fault().part());
    }
  }

  private final UnitReadings unit;
  private final SolvedUnit solved;
  private final List<String> places = new ArrayList<>();
  private final double[] meters;
  private final double[] healthy;
  private final List<Observation> observations = new ArrayList<>();
  private final Set<String> uncertain;
  private final List<Weighed> faults = new ArrayList<>();
  private double none;

  FaultPosterior(UnitReadings unit, SolvedUnit solved, ToDoubleFunction<PartId> priors) {
    this.unit = unit;
    this.solved = solved;
    this.uncertain = solved.uncertain(unit);
    solved.nodes().forEach(node -> places.add(node.net().text()));
    this.meters = solved.nodes().stream().mapToDouble(SolvedUnit.NodeReading::meterOhms).toArray();
    OperatingPoint point = solved.book().healthy();
    this.healthy = new double[places.size()];
    for (int n = 0; n < healthy.length; n++) {
      healthy[n] = point.voltsUnderMeter(places.get(n), meters[n]).orElse(Double.NaN);
    }
    observe();
    weigh(priors);
  }

  private void observe() {
    Set<Integer> done = new HashSet<>();
    for (int n = 0; n < healthy.length; n++) {
      NetId net = solved.nodes().get(n).net();
      int twin = unit.twins().net(net).map(NetId::text).map(places::indexOf).orElse(-1);
      if (twin >= 0 && done.add(n) && done.add(twin)) {
        pair(n, twin);
      } else if (twin < 0) {
        alone(n);
      }
    }
  }

  private void pair(int n, int twin) {
    double a = solved.nodes().get(n).volts();
    double b = solved.nodes().get(twin).volts();
    double spread = Math.hypot(own(n), own(twin));
    double doubt = doubt(n);
    observations.add(
        new Observation(
            n, twin, Observation.Kind.DIFFERENCE, a - b, Math.hypot(spread, doubt / 4), 0));
    observations.add(
        new Observation(
            n,
            twin,
            Observation.Kind.MEAN,
            (a + b) / 2,
            Math.hypot(Math.hypot(spread / 2, model(n)), doubt),
            0));
  }

  private void alone(int n) {
    SolvedUnit.NodeReading node = solved.nodes().get(n);
    OptionalDouble told = unit.nominal(node.net());
    double error = told.isPresent() ? DRAWN * Math.abs(told.getAsDouble()) + 0.02 : model(n);
    double sigma = Math.hypot(Math.hypot(own(n), error), doubt(n));
    double offset = told.isPresent() ? told.getAsDouble() - healthy[n] : 0;
    observations.add(new Observation(n, -1, Observation.Kind.ALONE, node.volts(), sigma, offset));
  }

  /** What a healthy node differs by from another of its kind: its parts, the meter. */
  private double own(int n) {
    double meter = METER_FRACTION * Math.abs(solved.nodes().get(n).volts()) + METER_VOLTS;
    return Math.hypot(solved.book().spread(places.get(n)), meter);
  }

  private double model(int n) {
    return MODEL_FRACTION * Math.abs(healthy[n]) + MODEL_SPAN * solved.span();
  }

  private double doubt(int n) {
    return doubt(places.get(n));
  }

  /** What is open but for plugs may move a node; as a standard deviation. */
  private double doubt(String node) {
    OperatingPoint point = solved.book().healthy();
    double sum = 0;
    for (String other : uncertain) {
      double follows = other.equals(node) ? 1 : point.follows(node, other);
      sum = Math.hypot(sum, follows * solved.span() / 8);
    }
    return sum;
  }

  private void weigh(ToDoubleFunction<PartId> priors) {
    Map<String, List<PredictedFault>> byMode = new LinkedHashMap<>();
    Map<String, Set<String>> modes = new HashMap<>();
    for (PredictedFault fault : solved.book().faults()) {
      String part = fault.fault().part();
      byMode.computeIfAbsent(key(fault), key -> new ArrayList<>()).add(fault);
      modes.computeIfAbsent(part, p -> new HashSet<>()).add(key(fault));
    }
    List<PredictedFault> all = solved.book().faults();
    double[] logs = new double[all.size() + 1];
    double sum = 0;
    double[] prior = new double[all.size()];
    for (int k = 0; k < prior.length; k++) {
      String part = all.get(k).fault().part();
      double whole =
          modes.getOrDefault(part, Set.of()).stream().mapToDouble(key -> share(byMode, key)).sum();
      int alike = byMode.getOrDefault(key(all.get(k)), List.of()).size();
      prior[k] =
          priors.applyAsDouble(new PartId(part)) * share(byMode, key(all.get(k))) / whole / alike;
      sum += prior[k];
    }
    List<double[]> volts = new ArrayList<>();
    for (int k = 0; k < prior.length; k++) {
      volts.add(shown(all.get(k)));
      logs[k] = Math.log(prior[k] / sum * (1 - NONE)) + log(volts.get(k));
    }
    double unknown =
        observations.stream()
            .mapToDouble(one -> one.logLikelihoodUnknown(healthy, solved.span()))
            .sum();
    logs[prior.length] = Math.log(NONE) + TEMPER * unknown;
    double[] shares = shares(logs);
    for (int k = 0; k < prior.length; k++) {
      faults.add(new Weighed(all.get(k), volts.get(k), shares[k]));
    }
    faults.sort(Comparator.comparingDouble(Weighed::share).reversed());
    none = shares[prior.length];
  }

  private static String key(PredictedFault fault) {
    return fault.fault().part() + " " + fault.fault().mode();
  }

  private double share(Map<String, List<PredictedFault>> byMode, String key) {
    Fault fault = byMode.getOrDefault(key, List.of()).get(0).fault();
    String family = unit.circuit().kindOf(new PartId(fault.part())).map(Kind::family).orElse("");
    return FailureShares.of(family, fault.mode());
  }

  private double[] shown(PredictedFault fault) {
    double[] volts = new double[places.size()];
    for (int n = 0; n < volts.length; n++) {
      volts[n] = fault.shown(places.get(n), meters[n]).orElse(Double.NaN);
    }
    return volts;
  }

  /** A fault without a solution is as likely as one that nobody thought of, and no likelier. */
  private double log(double[] volts) {
    double sum = 0;
    for (Observation one : observations) {
      double log = one.logLikelihood(volts, healthy);
      sum += Double.isNaN(log) ? one.logLikelihoodUnknown(healthy, solved.span()) : log;
    }
    return TEMPER * sum;
  }

  private static double[] shares(double[] logs) {
    double most = java.util.Arrays.stream(logs).max().orElse(0);
    double[] shares = java.util.Arrays.stream(logs).map(log -> Math.exp(log - most)).toArray();
    double sum = java.util.Arrays.stream(shares).sum();
    return java.util.Arrays.stream(shares).map(share -> share / sum).toArray();
  }

  /** All solved faults, the likeliest first. */
  List<Weighed> faults() {
    return faults;
  }

  /** The share of what nobody thought of. */
  double none() {
    return none;
  }

  /** The parts' shares: each the sum over its faults. */
  Map<PartId, Double> parts() {
    Map<PartId, Double> parts = new LinkedHashMap<>();
    faults.forEach(one -> parts.merge(one.part(), one.share(), Double::sum));
    return parts;
  }

  /** The parts' shares of faults that the nodes read so far don't show. */
  Map<PartId, Double> silent() {
    Map<PartId, Double> parts = new LinkedHashMap<>();
    faults.stream()
        .filter(one -> apart(one.volts(), healthy) <= SILENT)
        .forEach(one -> parts.merge(one.part(), one.share(), Double::sum));
    return parts;
  }

  /** The likeliest fault of a part that the readings show; else the likeliest. */
  Optional<Weighed> best(PartId part) {
    List<Weighed> all = faults.stream().filter(one -> one.part().equals(part)).toList();
    return all.stream()
        .filter(one -> apart(one.volts(), healthy) > SILENT)
        .findFirst()
        .or(() -> all.stream().findFirst());
  }

  /** What two faults predict for the readings, apart by so many standard deviations at most. */
  double apart(Weighed a, Weighed b) {
    return apart(a.volts(), b.volts());
  }

  private double apart(double[] a, double[] b) {
    double most = 0;
    for (Observation one : observations) {
      double x = one.expected(a);
      double y = one.expected(b);
      double change = Math.abs(x - one.expected(healthy)) + Math.abs(y - one.expected(healthy));
      double sigma = Math.hypot(one.sigma(), Observation.CHANGE_ERROR * change / 2);
      most = Math.max(most, Math.abs(x - y) / sigma);
    }
    return most;
  }

  /** Read and predicted volts of the nodes that a fault moves most, the largest change first. */
  List<NodeFigure> figures(Weighed fault) {
    List<NodeFigure> figures = new ArrayList<>();
    for (int n = 0; n < healthy.length; n++) {
      if (!Double.isNaN(fault.volts()[n])) {
        SolvedUnit.NodeReading node = solved.nodes().get(n);
        figures.add(new NodeFigure(node.net(), node.volts(), fault.volts()[n], healthy[n]));
      }
    }
    figures.sort(Comparator.comparingDouble(NodeFigure::change).reversed());
    return figures.stream().filter(figure -> figure.change() > METER_VOLTS).limit(3).toList();
  }

  /** The prediction of a fault at a node that wasn't read; the meter being the bench's. */
  OptionalDouble predicted(Weighed fault, NetId net, double meterOhms) {
    return fault.predicted().shown(net.text(), meterOhms);
  }

  /** One standard deviation of what a reading there would lie from a prediction, in volts. */
  double sigma(NetId net) {
    String node = net.text();
    double volts = solved.book().healthy().volts(node).orElse(0);
    double meter = METER_FRACTION * Math.abs(volts) + METER_VOLTS;
    boolean compared = unit.twin(net).isPresent();
    double model =
        compared
            ? solved.book().spread(node)
            : MODEL_FRACTION * Math.abs(volts) + MODEL_SPAN * solved.span();
    return Math.hypot(
        Math.hypot(solved.book().spread(node), meter), Math.hypot(model, doubt(node)));
  }

  SolvedUnit solved() {
    return solved;
  }
}
