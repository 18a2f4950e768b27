package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextSectionTest {

    @Test
    void pointsComeBackUnbroken() {
        List<String> points =
                List.of("short", "a point of many words ".repeat(20).strip(), "with - a dash - in it");

        TextSection section = new TextSection("heading", TextSection.listed(points));

        assertThat(section.lines()).hasSizeGreaterThan(points.size());
        assertThat(section.points()).isEqualTo(points);
    }
}
