package dev.warmlane.study;

/** Hears how far a study has come, and may stop it. Called from several threads. */
public interface Progress {

    /** Hears nothing and stops nothing. */
    Progress SILENT = (finished, total) -> {};

    /** Called after each finished run. */
    void finished(int finished, int total);

    /** Asked before each run; true stops the study with a {@link java.util.concurrent.CancellationException}. */
    default boolean cancelled() {
        return false;
    }
}
