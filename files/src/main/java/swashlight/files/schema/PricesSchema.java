package swashlight.files.schema;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import swashlight.files.prices.PricesFiles;
import swashlight.findings.cost.Job;

/** The shape of prices. */
final class PricesSchema {
    private PricesSchema() {}

    static Map<String, Object> shape() {
        Map<String, Object> properties = DriveSchema.heading("prices");
        properties.put("currency", Shapes.text("its sign or name"));
        properties.put("labour", money("an hour's work of one person"));
        properties.put(
                "newDrive", money("price of a new drive; what is left out follows from it in the usual proportion"));
        Map<String, Object> jobs = new LinkedHashMap<>();
        for (Job job : Job.values()) {
            Map<String, Object> price = new LinkedHashMap<>();
            price.put("time", Definitions.measure("of one person", PricesFiles.time()));
            price.put("parts", money("parts"));
            jobs.put(job.key(), Shapes.keys(price, List.of()));
        }
        properties.put("jobs", Shapes.keys(jobs, List.of()));
        Map<String, Object> core = new LinkedHashMap<>();
        core.put("deposit", money("paid until the old drive comes back"));
        core.put("refused", Definitions.measure("chance that it is not taken", PricesFiles.chance()));
        core.put("noTrouble", money("charged when nothing is found wrong with it"));
        properties.put("core", Shapes.keys(core, List.of()));
        properties.put("comeback", money("a customer who comes back: fetching, finding the cause, good will"));
        properties.put("downtime", money("what an hour of standing costs the customer"));
        Map<String, Object> readings = new LinkedHashMap<>();
        for (String key : PricesFiles.readings()) {
            readings.put(key, Definitions.measure("time of that reading", PricesFiles.time()));
        }
        properties.put("readings", Shapes.keys(readings, List.of()));
        return Shapes.keys(properties, List.of());
    }

    private static Map<String, Object> money(String description) {
        return Shapes.of("description", description + ", an amount of money", "type", List.of("number", "string"));
    }
}
