package dev.warmlane.report.page;

import com.samskivert.mustache.Mustache;
import dev.warmlane.files.Printable;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Fills in the templates among the library's resources; what goes in is escaped unless the template says otherwise. */
final class PageTemplate {

    private PageTemplate() {}

    /**
     * A page.
     *
     * @param name of its template
     * @param values by the names that the template has for them
     */
    static String filled(String name, Map<String, @Nullable Object> values) {
        Map<String, @Nullable Object> all = new HashMap<>(values);
        all.put("version", version());
        return Mustache.compiler()
                .withFormatter(value -> Printable.lines(String.valueOf(value)))
                .withLoader(part -> new StringReader(resource(part)))
                .compile(resource(name))
                .execute(all);
    }

    private static String version() {
        String version = PageTemplate.class.getPackage().getImplementationVersion();
        return version == null ? "built from source" : version;
    }

    private static String resource(String name) {
        try (InputStream in = PageTemplate.class.getResourceAsStream(name + ".mustache")) {
            if (in == null) {
                throw new IllegalStateException("template " + name + ".mustache is not among the library's resources");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
