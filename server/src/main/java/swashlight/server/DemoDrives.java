package swashlight.server;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.files.demo.DemoShelf;
import swashlight.files.drive.DriveFile;
import swashlight.files.drive.DriveFiles;
import tools.jackson.databind.json.JsonMapper;

/** The invented drives as the page reads them: SI values in the order of the parameters. */
final class DemoDrives {
    private DemoDrives() {}

    static String json() {
        List<Map<String, Object>> drives =
                DemoShelf.drives().stream().map(DemoDrives::tree).toList();
        return JsonMapper.builder().build().writeValueAsString(drives);
    }

    private static Map<String, Object> tree(String key) {
        DriveFile file = DriveFiles.open(DemoShelf.drive(key));
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("key", key);
        tree.put("name", file.drive().name());
        tree.put("about", file.about());
        tree.put(
                "values",
                Parameters.all().stream()
                        .map(parameter -> value(file, parameter))
                        .toList());
        return tree;
    }

    private static double value(DriveFile file, Parameter parameter) {
        return file.drive().quantity(parameter).value();
    }
}
