package org.relegend.viewer.ui;

import org.relegend.store.MapFolder;
import org.relegend.viewer.session.Session;

/** An open map in a window: its folder, what is being done to it, and what shows and keeps it. */
record Sitting(
    MapFolder folder, Session session, Keeping keeping, Checking checking, WorkPanel panel) {}
