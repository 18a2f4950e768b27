package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

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

    /** The tests have no console. */
    @Test
    void filesAreInUtf8() {
        assertThat(Terminal.shows()).isEqualTo(StandardCharsets.UTF_8);
    }
}
