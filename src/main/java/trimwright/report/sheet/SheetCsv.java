package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The tables of a sheet as comma-separated values (RFC 4180), for people who keep spreadsheets. */
public final class SheetCsv {

    private static final int LONGEST_NAME = 40;

    private SheetCsv() {}

    /** Each table's text by a name for its file, in the order of the sheet. */
    public static Map<String, String> of(Sheet sheet) {
        Map<String, String> files = new LinkedHashMap<>();
        for (Sheet.Section section : sheet.sections()) {
            for (Block block : section.blocks()) {
                if (block instanceof Block.Grid grid) {
                    files.put(name(grid.caption(), files), text(grid));
                }
            }
        }
        return files;
    }

    private static String name(String caption, Map<String, String> taken) {
        String base = caption.toLowerCase(Locale.ROOT).replaceAll("[;,:].*", "").replaceAll("[^a-z0-9]+", "-");
        base = base.substring(0, Math.min(LONGEST_NAME, base.length())).replaceAll("^-|-$", "");
        String name = base + ".csv";
        for (int i = 2; taken.containsKey(name); i++) {
            name = base + "-" + i + ".csv";
        }
        return name;
    }

    private static String text(Block.Grid grid) {
        List<List<String>> lines = new ArrayList<>(List.of(grid.head()));
        lines.addAll(grid.rows());
        StringBuilder text = new StringBuilder();
        for (List<String> line : lines) {
            text.append(String.join(",", line.stream().map(SheetCsv::cell).toList()))
                    .append("\r\n");
        }
        return text.toString();
    }

    private static String cell(String words) {
        boolean quoted = words.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return quoted ? '"' + words.replace("\"", "\"\"") + '"' : words;
    }
}
