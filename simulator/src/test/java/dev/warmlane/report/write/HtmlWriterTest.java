package dev.warmlane.report.write;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.InventedReport;
import dev.warmlane.report.Report;
import dev.warmlane.scenario.Letterhead;
import dev.warmlane.scenario.Logo;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class HtmlWriterTest {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    @Test
    void writesEveryKindOfBlockOnItsSheet() throws Exception {
        Document page = parsed(HtmlWriter.page(InventedReport.REPORT));

        assertThat(text(page, "main"))
                .isEqualTo("Märchenbad Nowhere, season 1 May to 2 May A paragraph. Another one."
                        + " 24.0 °Cmeancold before 9 dayswarm"
                        + " Both only in short two pools poolheat old1,235 new- after the table");
        assertThat(text(page, "body"))
                .contains(" For the technical reader Märchenbad Both only in full two pools")
                .contains("Technical for whoever checks it Simulated hour by hour with Warmlane");
    }

    @Test
    void letterheadStandsAboveTheTitle() throws Exception {
        Letterhead head = Letterhead.builder()
                .company("<b>Sunny</b> Pools")
                .contact("555-0100")
                .logo(new Logo("logo.png", "image/png", "QUJD"))
                .preparedFor("the club")
                .offer("17")
                .date("3 May")
                .build();
        Report report = new Report("r", "A title", "", head, PLAIN, InventedReport.REPORT.sections(), List.of());
        Document page = parsed(HtmlWriter.page(report));

        assertThat(text(page, "header")).isEqualTo("<b>Sunny</b> Pools555-0100 Prepared for the clubOffer 173 May");
        assertThat(((Element) page.getElementsByTagName("img").item(0)).getAttribute("src"))
                .isEqualTo("data:image/png;base64,QUJD");
        assertThat(TextWriter.full(report))
                .contains("=======\n<b>Sunny</b> Pools\n555-0100\nPrepared for the club\nOffer 17\n3 May\n");
        assertThat(HtmlWriter.page(InventedReport.REPORT)).doesNotContain("<header", "<img");
    }

    @Test
    void saysWhyThereAreNoCharts() throws Exception {
        assertThat(text(parsed(HtmlWriter.page(InventedReport.REPORT, Optional.of("no fonts"))), "main"))
                .contains("9 dayswarm no fonts Both");
    }

    @Test
    void aNumberKeepsItsUnitOnItsLine() {
        assertThat(HtmlWriter.page(InventedReport.of("short", "at 24.0 °C for 32,400 EUR on 3 May")))
                .contains("at 24.0\u00a0°C for 32,400\u00a0EUR on 3 May");
        assertThat(HtmlWriter.page(InventedReport.REPORT)).contains("24.0\u00a0°C", "9\u00a0days");
    }

    @Test
    void whatComesFromOutsideIsEscaped() throws Exception {
        String evil = "<script>alert(1)</script> & \"quoted\" 'twice' </title><h1>";
        String page = HtmlWriter.page(InventedReport.of(evil));

        assertThat(page).doesNotContain("<script");
        assertThat(parsed(page).getElementsByTagName("h1").item(0).getTextContent())
                .isEqualTo(evil);
        assertThat(parsed(page).getElementsByTagName("li").item(0).getTextContent())
                .isEqualTo(evil);
    }

    private static String text(Document page, String element) {
        return page.getElementsByTagName(element)
                .item(0)
                .getTextContent()
                .replaceAll("[\\s\u00a0]+", " ")
                .strip();
    }

    private static Document parsed(String page) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }
}
