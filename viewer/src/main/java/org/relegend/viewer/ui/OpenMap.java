package org.relegend.viewer.ui;

import java.util.Optional;
import org.relegend.store.MapFolder;
import org.relegend.viewer.mode.bench.JobAutosave;
import org.relegend.viewer.mode.check.CheckRunner;
import org.relegend.viewer.session.Session;

/**
 * An open map in a window: its folder, what is being done to it, and what shows and keeps it.
 *
 * @param job keeps the job that lies over it, if there is one
 */
record OpenMap(
    MapFolder folder,
    Session session,
    MapAutosave keeping,
    CheckRunner checking,
    MapPanel panel,
    SavedViewWriter remembering,
    Optional<JobAutosave> job) {}
