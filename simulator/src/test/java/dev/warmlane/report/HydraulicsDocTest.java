package dev.warmlane.report;

import dev.warmlane.DocBlock;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.study.FlowStudy;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SharedForcing;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What docs/hydraulics.md shows of the invented circuit is what the reports say of it. */
class HydraulicsDocTest {

    private static final Subject DRAWN = SampleReports.DRAWN;

    private static void check(String block, Report.Data data) throws IOException {
        DocBlock.check(
                "hydraulics.md", block, "```\n" + TextWriter.table(data.table().get()) + "```\n");
    }

    @Test
    void headAndBanksAreThoseOfTheForecast() throws IOException {
        List<Report.Data> data = new WaterSection(DRAWN).data();
        check("head", data.get(0));
        check("banks", data.get(1));
    }

    @Test
    void flowsAreThoseOfTheAreasReport() throws IOException {
        FlowSection section = new FlowSection(
                FlowStudy.of(
                        DRAWN.forecast(), new SharedForcing(DRAWN.forecast().weather()), Runs.onAllCores()),
                DRAWN.numbers());
        check("flows", section.data().get(0));
    }
}
