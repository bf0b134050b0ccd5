package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The tables of a sheet as comma-separated values (RFC 4180), for people who keep spreadsheets. */
public final class SheetCsv {

    private SheetCsv() {}

    /** Each table's text by a name for its file, in the order of the sheet. */
    public static Map<String, String> of(Sheet sheet) {
        Map<String, String> files = new LinkedHashMap<>();
        for (Sheet.Section section : sheet.sections()) {
            for (Block block : section.blocks()) {
                if (block instanceof Block.Grid grid) {
                    files.put(grid.name() + ".csv", text(grid));
                }
            }
        }
        return files;
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
