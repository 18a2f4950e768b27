package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTError;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DrawingTest {

    /** What several versions of Java throw where there is no fontconfig, no font, or no library for either. */
    static Stream<Runnable> failures() {
        return Stream.of(
                () -> {
                    throw new InternalError("java.lang.reflect.InvocationTargetException");
                },
                () -> {
                    throw new Error("Probable fatal error: no fonts found");
                },
                () -> {
                    throw new UnsatisfiedLinkError("libfreetype.so.6: cannot open shared object file");
                },
                () -> {
                    throw new NoClassDefFoundError("Could not initialize class sun.font.SunFontManager");
                },
                () -> {
                    throw new RuntimeException("Fontconfig head is null, check your fonts or fonts configuration");
                });
    }

    @ParameterizedTest
    @MethodSource("failures")
    void missingFontsAreToldInOneLineThatSaysWhatToInstall(Runnable failure) {
        assertThat(Drawing.missing(failure)).hasValueSatisfying(why -> assertThat(why)
                .contains("fontconfig", "fonts-dejavu-core")
                .doesNotContain("\n"));
    }

    @Test
    void missingScreenIsToldAsSuch() {
        assertThat(Drawing.missing(() -> {
                    throw new AWTError("Can't connect to X11 window server");
                }))
                .hasValueSatisfying(why -> assertThat(why).contains("-Djava.awt.headless=true"));
    }

    @Test
    void thisMachineCanDraw() {
        assertThat(Drawing.missing()).isEmpty();
    }
}
