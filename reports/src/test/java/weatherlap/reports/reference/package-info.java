/**
 * Results held against a second program: the model in numpy, written from its prose, under {@code src/test/numpy}. Without Python 3.11 and
 * numpy the tests are skipped and say so; where WEATHERLAP_REQUIRE_NUMPY is true that is a failure.
 */
package weatherlap.reports.reference;
