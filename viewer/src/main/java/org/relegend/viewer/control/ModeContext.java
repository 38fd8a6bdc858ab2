package org.relegend.viewer.control;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.BackgroundTask;
import org.relegend.viewer.work.TaskRunner;

/**
 * What a view of a mode works with.
 *
 * @param shelf where the pictures' files are
 * @param actions of the window
 * @param jobs for what a person waits for
 * @param watch shows how far a job is
 * @param open whether the map is still open: what comes later is dropped
 */
public record ModeContext(
    Session session,
    OpenedPictures shelf,
    Actions actions,
    TaskRunner jobs,
    Consumer<BackgroundTask> watch,
    BooleanSupplier open) {}
