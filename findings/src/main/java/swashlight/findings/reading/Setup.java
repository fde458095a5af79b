package swashlight.findings.reading;

import java.util.Optional;
import java.util.OptionalDouble;
import swashlight.drive.description.Parameter;

/**
 * The conditions of one reading, as stated by whoever took it. What is left empty takes the usual setup of its kind and is asked for when
 * it matters.
 *
 * <pre>
 *   stroke          share of full travel, negative in reverse    1      −1 … 1
 *   throttle        share of full governed speed                 1      0.2 … 1
 *   inputSpeed      measured at the same moment                  rad/s
 *   oilTemperature  of oil or case                               K
 *   temperatureError one standard deviation                      K
 *   slope           positive when the front points uphill        rad
 *   slopeError      one standard deviation                       rad
 *   distance        of a timed run                               m
 *   load            drawbar pull                                 N
 *   since           time since a cold start                      s
 *   ambient         air temperature                              K
 *   part            what a teardown dimension measures
 *   held            the wheels were held
 *   lifted          the wheels were clear of the ground
 *   backwards       rolled or was pushed backwards (the slope already says so for a roll)
 * </pre>
 */
public record Setup(
        OptionalDouble stroke,
        OptionalDouble throttle,
        OptionalDouble inputSpeed,
        OptionalDouble oilTemperature,
        OptionalDouble temperatureError,
        OptionalDouble slope,
        OptionalDouble slopeError,
        OptionalDouble distance,
        OptionalDouble load,
        OptionalDouble since,
        OptionalDouble ambient,
        Optional<Parameter> part,
        boolean lifted,
        boolean held,
        boolean backwards) {}
