package org.relegend.viewer.mode;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.relegend.viewer.control.ModeContext;
import org.relegend.viewer.control.ModeView;
import org.relegend.viewer.control.QuestionForm;
import org.relegend.viewer.mode.bench.BenchNotes;
import org.relegend.viewer.mode.bench.ConditionEditor;
import org.relegend.viewer.mode.bench.ConditionForm;
import org.relegend.viewer.mode.bench.OpenJob;
import org.relegend.viewer.mode.bench.UnitPhotoEditor;
import org.relegend.viewer.mode.check.FindingFix;
import org.relegend.viewer.mode.edit.EntryEditor;
import org.relegend.viewer.mode.edit.RemoveForm;
import org.relegend.viewer.mode.lineup.LineUpTool;
import org.relegend.viewer.mode.lineup.LineUpView;
import org.relegend.viewer.mode.look.LookTool;
import org.relegend.viewer.mode.look.LookView;
import org.relegend.viewer.mode.look.OtherSide;
import org.relegend.viewer.mode.measure.MeasureTool;
import org.relegend.viewer.mode.measure.MeasureView;
import org.relegend.viewer.mode.pins.PinsTool;
import org.relegend.viewer.mode.pins.PinsView;
import org.relegend.viewer.mode.place.PlaceTool;
import org.relegend.viewer.mode.place.PlaceView;
import org.relegend.viewer.mode.straighten.StraightenTool;
import org.relegend.viewer.mode.straighten.StraightenView;
import org.relegend.viewer.mode.trace.TraceTool;
import org.relegend.viewer.mode.trace.TraceView;
import org.relegend.viewer.mode.twins.ChannelComparison;
import org.relegend.viewer.mode.twins.PredictedPlaces;
import org.relegend.viewer.mode.twins.TwinForm;
import org.relegend.viewer.mode.twins.TwinJump;
import org.relegend.viewer.mode.twins.TwinTool;
import org.relegend.viewer.mode.zone.ZoneTool;
import org.relegend.viewer.mode.zone.ZoneView;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.PlacementCorrections;
import org.relegend.viewer.session.Room;
import org.relegend.viewer.session.Session;

/**
 * All modes in the order they are offered, and the rooms beside them. A new mode is a line here.
 */
public final class Modes {
  private static final List<Entry<?>> MODES =
      List.of(
          new Entry<>(LookTool.class, LookTool::new, LookView::new),
          new Entry<>(PlaceTool.class, PlaceTool::new, PlaceView::new),
          new Entry<>(PinsTool.class, PinsTool::new, PinsView::new),
          new Entry<>(TraceTool.class, TraceTool::new, TraceView::new),
          new Entry<>(ZoneTool.class, ZoneTool::new, ZoneView::new),
          new Entry<>(LineUpTool.class, LineUpTool::new, LineUpView::new),
          new Entry<>(MeasureTool.class, MeasureTool::new, MeasureView::new),
          new Entry<>(StraightenTool.class, StraightenTool::new, StraightenView::new));

  /** Those that others ask when they begin come first. */
  private static final List<Function<Session, ? extends Room>> BESIDE =
      List.of(
          OpenJob::new,
          BenchNotes::new,
          UnitPhotoEditor::new,
          ConditionEditor::new,
          PlacementCorrections::new,
          EntryEditor::new,
          FindingFix::new,
          OtherSide::new,
          PredictedPlaces::new,
          TwinTool::new,
          TwinJump::new,
          ChannelComparison::new);

  private static final List<Function<Session, ? extends QuestionForm>> FORMS =
      List.of(ConditionForm::new, RemoveForm::new, TwinForm::new);

  private Modes() {}

  private record Entry<M extends Mode>(
      Class<M> kind, Function<Session, M> mode, BiFunction<M, ModeContext, ModeView> view) {
    ModeView show(ModeContext context) {
      return view.apply(context.session().room(kind), context);
    }
  }

  /** What a session is made with. */
  public static List<Function<Session, ? extends Room>> rooms() {
    return Stream.concat(
            BESIDE.stream(),
            MODES.stream().<Function<Session, ? extends Room>>map(entry -> entry.mode()))
        .toList();
  }

  /** The view of each mode of a session. */
  public static Map<Mode, ModeView> views(ModeContext context) {
    Map<Mode, ModeView> views = new LinkedHashMap<>();
    MODES.forEach(entry -> views.put(context.session().room(entry.kind()), entry.show(context)));
    return views;
  }

  /** How all questions of a session are put that aren't those of a mode. */
  public static List<QuestionForm> forms(Session session) {
    return FORMS.stream().<QuestionForm>map(form -> form.apply(session)).toList();
  }
}
