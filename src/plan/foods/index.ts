// Foods and what a day of them comes to, apart from the rest of the plan so that the table is loaded only when opened.

export { type DaysFood, daysFood, FOOD_PACKING, type Portion, putDaysFood } from './mix'
export { type Food, foods, foodWithId, withoutDensity } from './table'
