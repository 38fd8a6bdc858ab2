package org.relegend.viewer.session;

/**
 * Something only the technician can say, before what they began is finished. Each room has its own;
 * whoever asks it knows how it is put and what its answer does.
 */
public interface Question {}
