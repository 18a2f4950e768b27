package dev.warmlane.report.chart;

import java.awt.AWTError;
import java.util.Optional;

/** Whether this machine can draw. Charts need fonts, which small servers often lack. */
public final class Drawing {

    private static final String NO_FONTS = "The charts are left out, because Java finds no fonts to draw with. Install"
            + " fontconfig and a font, for example the packages fontconfig and fonts-dejavu-core.";

    private Drawing() {}

    /** What is missing and what to install, in one line; nothing where charts can be drawn. */
    public static Optional<String> missing() {
        return missing(() -> Lettering.plain("water").width());
    }

    /** The same with another attempt at drawing. */
    static Optional<String> missing(Runnable attempt) {
        try {
            attempt.run();
            return Optional.empty();
        } catch (RuntimeException | LinkageError | InternalError | AWTError e) {
            // what is thrown without fonts differs from one Java to the next
            return Optional.of(NO_FONTS);
        }
    }
}
