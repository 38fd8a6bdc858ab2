package org.relegend.bench.entry;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.relegend.bench.Condition;
import org.relegend.bench.EntryId;
import org.relegend.bench.Instrument;
import org.relegend.bench.Job;
import org.relegend.bench.JobEdit;
import org.relegend.bench.JobTable;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.PartState;
import org.relegend.bench.Reading;
import org.relegend.bench.rule.NodeClass;
import org.relegend.bench.rule.ProbeLoad;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.NodeName;
import org.relegend.circuit.NodeNameException;
import org.relegend.circuit.NodeNames;
import org.relegend.map.Designator;
import org.relegend.map.NameRules;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;
import org.relegend.table.TableColumns;
import org.relegend.table.TableException;
import org.relegend.table.TableProblems;
import org.relegend.table.TableRow;
import org.relegend.table.TableSource;
import org.relegend.table.TableText;

/**
 * Tables of readings and conditions, planned into edits of a job: a table is taken whole or not at
 * all. What the map hasn't got is kept and warned of; what the job has already is not put in twice.
 */
public final class JobTables {
  private static final TableColumns READINGS =
      new TableColumns(List.of("at", "value"), List.of("quantity", "unit", "conditions"));
  private static final TableColumns CONDITIONS =
      new TableColumns(List.of("part", "condition"), List.of("date_code", "note", "value"));

  /**
   * What a table changes.
   *
   * @param edit all of it
   * @param count how many readings or conditions it puts in
   * @param same how many the job has already
   * @param warnings for the user, a sentence each
   */
  public record Plan(JobEdit.Group edit, int count, int same, List<String> warnings) {
    public Plan {
      warnings = List.copyOf(warnings);
    }
  }

  private final Job job;
  private final Circuit circuit;
  private final String author;
  private final Instant now;
  private final NodeNames names;
  private final VoltageBounds bounds;
  private final TableProblems problems = new TableProblems();
  private final List<String> warnings = new ArrayList<>();
  private final List<JobEdit> steps = new ArrayList<>();
  private int count;
  private int same;

  /**
   * @param author who enters them; may be empty
   * @param now when they were taken
   */
  public JobTables(Job job, Circuit circuit, String author, Instant now) {
    this.job = job;
    this.circuit = circuit;
    this.author = author;
    this.now = now;
    this.names = new NodeNames(circuit);
    this.bounds = VoltageBounds.of(circuit.map());
  }

  /**
   * Plans a table {@code at,quantity,value,unit,conditions}.
   *
   * @throws TableException with all that is wrong in it
   */
  public static Plan readings(
      Job job, Circuit circuit, TableSource source, String author, Instant now)
      throws TableException {
    JobTables tables = new JobTables(job, circuit, author, now);
    TableText text = TableText.read(source, READINGS);
    tables.warnings.addAll(text.warnings());
    tables.readings(text);
    return tables.plan("Readings from " + source.name());
  }

  /**
   * Plans a table {@code part,condition,date_code,note}.
   *
   * @throws TableException with all that is wrong in it
   */
  public static Plan conditions(
      Job job, Circuit circuit, TableSource source, String author, Instant now)
      throws TableException {
    JobTables tables = new JobTables(job, circuit, author, now);
    TableText text = TableText.read(source, CONDITIONS);
    tables.warnings.addAll(text.warnings());
    tables.conditions(text);
    return tables.plan("Conditions from " + source.name());
  }

  private Plan plan(String title) throws TableException {
    problems.throwIfAny();
    return new Plan(new JobEdit.Group(NameRules.printable(title), steps), count, same, warnings);
  }

  private void readings(TableText text) {
    UnitReadings unit = UnitReadings.of(job, circuit);
    int next = job.nextReading().number();
    boolean assumed = false;
    for (TableRow row : text.rows()) {
      Optional<Reading> read = reading(row, unit, next);
      if (read.isPresent()) {
        assumed |=
            !job.instrument().known()
                && read.get().setting().with().equals(Instrument.DIGITAL_METER);
        if (isThere(read.get())) {
          same++;
        } else {
          steps.add(JobTable.READINGS.put(read.get()));
          count++;
          next++;
        }
      }
    }
    if (assumed) {
      warnings.add(
          "Where no meter is named, one of 10 M\u03a9 is taken: say \"meter 10M\" in the conditions if"
              + " it was another.");
    }
  }

  private boolean isThere(Reading reading) {
    return job.readings().stream()
        .anyMatch(
            other ->
                other.at().equals(reading.at())
                    && other.amount().equals(reading.amount())
                    && other.setting().equals(reading.setting()));
  }

  private Optional<Reading> reading(TableRow row, UnitReadings unit, int number) {
    Optional<Amount> amount = row.read("value", value -> amount(row, value), problems);
    Instrument usual = job.instrument().known() ? job.instrument() : Instrument.UNKNOWN;
    Optional<TypedSetup> typed =
        row.read("conditions", text -> TypedSetup.parse(text, usual), problems);
    if (amount.isEmpty() || typed.isEmpty()) {
      return Optional.empty();
    }
    Optional<Subject> at = row.read("at", text -> place(row, text, amount.get()), problems);
    if (at.isEmpty()) {
      return Optional.empty();
    }
    Subject node = unit.netOf(at.get()).<Subject>map(Subject::of).orElse(at.get());
    typed.get().limit().ifPresent(limit -> steps.add(JobTable.LIMITS.put(limit.at(node))));
    return row.read(
        "conditions",
        text ->
            new Reading(
                new EntryId(number),
                at.get(),
                amount.get(),
                setting(typed.get().setting(), at.get(), amount.get(), unit),
                author,
                now),
        problems);
  }

  private Amount amount(TableRow row, String value) {
    String unit = row.text("unit");
    Amount amount = TypedReading.parse(row.text("quantity"), value, unit);
    bounds.check(amount, (value + " " + unit).strip(), TypedReading.isBare(value + " " + unit));
    return amount;
  }

  /** With a meter: the one named, or the usual one where the node isn't touchy. */
  private MeasurementSetup setting(
      MeasurementSetup setup, Subject at, Amount amount, UnitReadings unit) {
    MeasurementSetup setting = resolved(setup);
    if (setting.with().known() || amount.quantity() != Quantity.VOLTAGE) {
      return setting;
    }
    Optional<NetId> net = unit.netOf(at);
    boolean touchy =
        net.map(n -> ProbeLoad.of(unit, n))
            .map(loading -> loading.nodeClass() == NodeClass.HIGH_IMPEDANCE)
            .orElse(false);
    if (touchy) {
      throw new IllegalArgumentException(
          "say which meter read it, as \"meter 10M\": "
              + ProbeLoad.of(unit, net.orElseThrow())
                  .warning(unit, Instrument.DIGITAL_METER)
                  .orElse("the node is of high impedance"));
    }
    return new MeasurementSetup(
        setting.against(),
        Instrument.DIGITAL_METER,
        setting.power(),
        setting.lifted(),
        setting.words());
  }

  /** With the id of the net that the black lead was on. */
  private MeasurementSetup resolved(MeasurementSetup setup) {
    if (setup.against().isEmpty()) {
      return setup;
    }
    Subject against = node(setup.against());
    String id = against instanceof Subject.OfNet of ? of.net().text() : setup.against();
    return new MeasurementSetup(id, setup.with(), setup.power(), setup.lifted(), setup.words());
  }

  private Subject place(TableRow row, String text, Amount amount) {
    boolean ofPart =
        amount.quantity() == Quantity.RESISTANCE || amount.quantity() == Quantity.CAPACITANCE;
    Optional<Subject> part = part(text);
    if (ofPart && part.isPresent()) {
      return part.get();
    }
    try {
      return found(names.find(text), text);
    } catch (NodeNameException unknown) {
      if (part.isPresent()) {
        return part.get();
      }
      Subject kept = ofPart ? Subject.of(new PartId(text)) : asWritten(text);
      warnings.add(
          row.problem(
                  "at",
                  "the map has no \"%s\"; kept, and not counted"
                      .formatted(NameRules.printable(text)))
              .toString());
      return kept;
    }
  }

  private Subject node(String text) {
    try {
      return found(names.find(text), text);
    } catch (NodeNameException unknown) {
      throw new IllegalArgumentException(
          "the black lead was on \"%s\", and the map has no such net"
              .formatted(NameRules.printable(text)),
          unknown);
    }
  }

  private static Subject found(NodeName name, String text) {
    if (name instanceof NodeName.OfNet net) {
      return Subject.of(net.net());
    }
    if (name instanceof NodeName.OfPin pin) {
      return Subject.of(pin.pin());
    }
    throw new IllegalArgumentException(
        "only the drawing has \"%s\"; name the net as built".formatted(text));
  }

  private static Subject asWritten(String text) {
    return text.matches("[^\\s./]+[./][^\\s.]+")
        ? Subject.parse(text)
        : Subject.of(new NetId(text));
  }

  /** A part R101 or a section U101/Ta that the map has. */
  private Optional<Subject> part(String text) {
    int slash = text.indexOf('/');
    String name = slash > 0 ? text.substring(0, slash) : text;
    Optional<Part> part = partNamed(name);
    if (slash > 0) {
      String section = text.substring(slash + 1);
      return part.filter(p -> p.section(section).isPresent())
          .map(p -> new Subject.OfSection(p.id(), section));
    }
    return part.map(p -> Subject.of(p.id()));
  }

  private Optional<Part> partNamed(String text) {
    try {
      List<Part> named = circuit.index().partsNamed(new Designator(text));
      return named.size() == 1 ? Optional.of(named.get(0)) : circuit.map().part(new PartId(text));
    } catch (IllegalArgumentException noName) {
      return Optional.empty();
    }
  }

  private void conditions(TableText text) {
    Map<PartId, Integer> seen = new LinkedHashMap<>();
    for (TableRow row : text.rows()) {
      Optional<PartId> part = row.read("part", name -> partOf(row, name), problems);
      Optional<Set<PartState>> states = row.read("condition", JobTables::states, problems);
      if (part.isPresent() && states.isPresent()) {
        Integer before = seen.put(part.get(), row.line());
        if (before != null) {
          problems.add(row.problem("part", "stands in line %d already".formatted(before)));
        }
        row.read("note", note -> condition(row, part.get(), states.get(), note), problems)
            .ifPresent(this::put);
      }
    }
  }

  private void put(Condition condition) {
    Optional<Condition> before = job.condition(condition.part());
    boolean there =
        before.isPresent()
            && before.get().states().equals(condition.states())
            && before.get().dateCode().equals(condition.dateCode())
            && before.get().note().equals(condition.note())
            && before.get().fitted().equals(condition.fitted());
    if (there) {
      same++;
    } else {
      steps.add(JobTable.CONDITIONS.put(condition));
      count++;
    }
  }

  private Condition condition(TableRow row, PartId part, Set<PartState> states, String note) {
    return new Condition(
        part,
        states,
        row.text("value"),
        row.text("date_code"),
        note,
        job.condition(part).map(Condition::photos).orElse(List.of()),
        author,
        now);
  }

  private PartId partOf(TableRow row, String name) {
    Optional<Part> part = partNamed(name);
    if (part.isEmpty()) {
      PartId kept = new PartId(name);
      warnings.add(
          row.problem(
                  "part",
                  "the map has no part \"%s\"; kept, and not counted"
                      .formatted(NameRules.printable(name)))
              .toString());
      return kept;
    }
    return part.get().id();
  }

  /** "replaced + socketed", "re-soldered, damaged pad". */
  private static Set<PartState> states(String text) {
    Set<PartState> states = EnumSet.noneOf(PartState.class);
    for (String word : text.split("[+,;&]|\\band\\b", -1)) {
      states.add(PartState.of(word));
    }
    return states;
  }
}
