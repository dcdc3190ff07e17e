/**
 * What a family may choose between, and what each choice comes to: a plan for the whole house with its price, days, glass and leaks. A
 * family's sheet shows prices and never what they are made of; what only the shop may see is made in {@link weatherlap.reports.offer.Inside}.
 */
package weatherlap.reports.offer;
