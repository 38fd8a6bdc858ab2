package org.relegend.viewer.ui;

import java.util.Optional;
import org.relegend.store.MapFolder;
import org.relegend.viewer.mode.bench.JobAutosave;
import org.relegend.viewer.mode.check.Checking;
import org.relegend.viewer.session.Session;

/**
 * An open map in a window: its folder, what is being done to it, and what shows and keeps it.
 *
 * @param job keeps the job that lies over it, if there is one
 */
record Sitting(
    MapFolder folder,
    Session session,
    Keeping keeping,
    Checking checking,
    WorkPanel panel,
    Remembering remembering,
    Optional<JobAutosave> job) {}
