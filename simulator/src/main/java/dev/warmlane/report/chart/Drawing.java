package dev.warmlane.report.chart;

import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import java.awt.AWTError;
import java.util.Optional;

/** Whether this machine can draw. Charts need fonts, which small servers often lack. */
public final class Drawing {

    private static final String NO_FONTS = "The charts are left out, because Java finds no fonts to draw with. Install"
            + " fontconfig and a font, for example the packages fontconfig and fonts-dejavu-core.";

    private static final String NO_SCREEN =
            "The charts are left out, because Java looks for a screen that is not there."
                    + " Start it with -Djava.awt.headless=true.";

    private Drawing() {}

    /** What is missing and what to install, in one line; nothing where charts can be drawn. */
    public static Optional<String> missing() {
        return missing(() -> Lettering.plain("water").paint(new VectorGraphics2D(), 0, 0, Palette.INK));
    }

    /** The same with another attempt at drawing. */
    static Optional<String> missing(Runnable attempt) {
        try {
            attempt.run();
            return Optional.empty();
        } catch (AWTError e) {
            return Optional.of(NO_SCREEN);
        } catch (OutOfMemoryError | StackOverflowError e) {
            throw e;
        } catch (RuntimeException | Error e) {
            // what is thrown without fonts differs from one Java to the next: Java 17 a plain Error
            return Optional.of(NO_FONTS);
        }
    }
}
