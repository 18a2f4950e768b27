package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is printed can be read where it is shown. */
class TerminalTest {

    private static final Charset WESTERN_CONSOLE = Charset.forName("IBM850");

    @Test
    void aConsoleOfWindowsIsWrittenInItsCodePage() {
        assertThat(Terminal.shown("Windows 11", WESTERN_CONSOLE)).isEqualTo(WESTERN_CONSOLE);
    }

    @Test
    void otherTerminalsAreWrittenInUtf8WhateverTheirLocaleSays() {
        assertThat(Terminal.shown("Linux", StandardCharsets.US_ASCII)).isEqualTo(StandardCharsets.UTF_8);
    }

    /** A loss must not be read as a gain, nor a volume as an unknown unit. */
    @ParameterizedTest
    @CsvSource({
        "IBM437, -150 to 9 m\u00b2 and 12 m3",
        "IBM850, -150 to 9 m\u00b2 and 12 m\u00b3",
        "UTF-8, \u2212150 to 9 m\u00b2 and 12 m\u00b3"
    })
    void whatACodePageHasNotIsWrittenOtherwise(String codePage, String shown) {
        Charset charset = Charset.forName(codePage);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();

        try (PrintWriter out = Terminal.printing(bytes, charset)) {
            out.print("\u2212150 to 9\u00a0m\u00b2 and 12 m\u00b3");
        }

        assertThat(bytes.toString(charset).replace('\u00a0', ' ')).isEqualTo(shown);
    }

    /** The tests have no console. */
    @Test
    void filesAreInUtf8() {
        assertThat(Terminal.shows()).isEqualTo(StandardCharsets.UTF_8);
    }
}
