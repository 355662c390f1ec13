-- What searches and charts narrow by: the day as written, and the connector in a span of days.

CREATE INDEX scoring_of_day ON scoring (substr(scored_at, 1, 10));
CREATE INDEX scoring_of_connector ON scoring (connector, substr(scored_at, 1, 10));
