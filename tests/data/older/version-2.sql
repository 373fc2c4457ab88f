-- A logbook as version 2 of its layout wrote it: a class taught to its end, and a rehearsal broken off.
-- Made up; dumped with sqlite3 .dump. Never changed: it stands for the logbooks that are out there.
PRAGMA application_id = 1114792556;
PRAGMA user_version = 2;
PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE session (
    id             TEXT    PRIMARY KEY NOT NULL CHECK (length(id) = 32),
    class_id       TEXT    NOT NULL,
    title          TEXT    NOT NULL,
    venue          TEXT    NOT NULL,
    teacher        TEXT    NOT NULL,
    rehearsal      INTEGER NOT NULL CHECK (rehearsal IN (0, 1)),
    started_utc_ms INTEGER NOT NULL,
    closed_utc_ms  INTEGER,
    network        TEXT    NOT NULL
, events INTEGER NOT NULL DEFAULT 0) STRICT;
INSERT INTO session VALUES('66fd5dad5b6a7721fb9cdff3df41262f','small-class','A small class','Grange hall','A teacher',0,1790000000000,1790002106323,'{"activities":[{"after":[],"amounts":[],"cautions":[],"detail":"","dish":-1,"duration":{"high":120,"likely":120,"low":120},"endsBySight":false,"hands":"throughout","handsAtEnd":0,"handsAtStart":0,"jars":0,"key":"class/opening","kind":"opening","load":-1,"lookFor":"","mayPause":false,"presenterOnly":true,"pulse":null,"stationHolds":[],"title":"class/opening"},{"after":[0],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":480,"likely":420,"low":360},"endsBySight":true,"hands":"pulses","handsAtEnd":20,"handsAtStart":20,"jars":0,"key":"tray","kind":"step","load":-1,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":{"action":"Turn the tray","gapHigh":120,"gapLow":60,"takes":15},"stationHolds":[0],"title":"tray"},{"after":[0],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":900,"likely":600,"low":400},"endsBySight":true,"hands":"ends","handsAtEnd":0,"handsAtStart":30,"jars":0,"key":"pot","kind":"step","load":-1,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":null,"stationHolds":[1],"title":"pot"},{"after":[1,2],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":240,"likely":180,"low":120},"endsBySight":false,"hands":"throughout","handsAtEnd":0,"handsAtStart":0,"jars":0,"key":"fill","kind":"step","load":-1,"lookFor":"","mayPause":true,"presenterOnly":false,"pulse":null,"stationHolds":[1],"title":"fill"},{"after":[],"amounts":[],"cautions":[],"detail":"","dish":-1,"duration":{"high":1500,"likely":1200,"low":900},"endsBySight":true,"hands":"ends","handsAtEnd":0,"handsAtStart":60,"jars":0,"key":"canner/preheat","kind":"preheat","load":-1,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":null,"stationHolds":[],"title":"canner/preheat"},{"after":[3,4],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":150,"likely":105,"low":80},"endsBySight":false,"hands":"throughout","handsAtEnd":0,"handsAtStart":0,"jars":0,"key":"canner/load-1/lower","kind":"lower","load":0,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":null,"stationHolds":[2],"title":"canner/load-1/lower"},{"after":[5],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":1000,"likely":670,"low":550},"endsBySight":true,"hands":"ends","handsAtEnd":10,"handsAtStart":0,"jars":0,"key":"canner/load-1/heat-up","kind":"heat-up","load":0,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":null,"stationHolds":[2],"title":"canner/load-1/heat-up"},{"after":[6],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":900,"likely":900,"low":900},"endsBySight":false,"hands":"none","handsAtEnd":0,"handsAtStart":0,"jars":0,"key":"canner/load-1/process","kind":"process","load":0,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":null,"stationHolds":[2],"title":"canner/load-1/process"},{"after":[7],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":300,"likely":300,"low":300},"endsBySight":false,"hands":"ends","handsAtEnd":0,"handsAtStart":30,"jars":0,"key":"canner/load-1/rest","kind":"rest","load":0,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":null,"stationHolds":[2],"title":"canner/load-1/rest"},{"after":[8],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":105,"likely":70,"low":50},"endsBySight":false,"hands":"throughout","handsAtEnd":0,"handsAtStart":0,"jars":0,"key":"canner/load-1/lift","kind":"lift","load":0,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":null,"stationHolds":[2],"title":"canner/load-1/lift"},{"after":[9],"amounts":[],"cautions":[],"detail":"","dish":-1,"duration":{"high":180,"likely":180,"low":180},"endsBySight":false,"hands":"throughout","handsAtEnd":0,"handsAtStart":0,"jars":0,"key":"class/closing","kind":"closing","load":-1,"lookFor":"","mayPause":false,"presenterOnly":true,"pulse":null,"stationHolds":[],"title":"class/closing"}],"altitude":"","classId":"small-class","closing":10,"dishes":[{"allergens":[],"id":"beans","jar":"pint","jars":4,"shelfLife":"","source":"","storage":"","title":"Beans"}],"format":1,"helpers":1,"kitchenCloser":"","kitchenSlot":null,"limits":[{"atMost":300,"from":2,"kind":"safety","remedy":"bring it back to the boil","to":3},{"atMost":300,"from":3,"kind":"quality","remedy":"reheat","to":5}],"loads":[{"canner":2,"dish":0,"heatUp":6,"jar":"pint","jars":4,"lift":9,"lower":5,"method":"boiling-water","number":1,"pack":"hot","process":7,"processTime":900,"rest":8,"tableEntry":"made-up entry","tableSource":""}],"notes":[],"opening":0,"readingDistance":0,"slot":4500,"startUtcMs":0,"stationHolds":[{"activities":[1],"candidates":[0],"vessel":"oven"},{"activities":[2,3],"candidates":[1],"vessel":"pot"},{"activities":[5,6,7,8,9],"candidates":[2],"vessel":"canner"}],"stations":[{"heat":"none","id":"oven","kind":"oven","name":"oven","power":null},{"heat":"none","id":"burner","kind":"burner","name":"burner","power":null},{"heat":"none","id":"canner","kind":"canner","name":"canner","power":null}],"talk":[{"activity":1,"dish":0,"key":"turn","length":30,"mayDrop":false,"mustSay":true,"text":"Turn the tray so that every side browns."},{"activity":-1,"dish":-1,"key":"altitude","length":60,"mayDrop":false,"mustSay":true,"text":"Water boils cooler up here."},{"activity":-1,"dish":-1,"key":"shelf","length":60,"mayDrop":true,"mustSay":false,"text":"Best within a year."}],"teacher":"A teacher","title":"A small class","venueName":"Grange hall"}',90);
INSERT INTO session VALUES('f692e42054c81f47bf65b6fb3fbf010d','small-class','A small class','Grange hall','A teacher',1,1790000000000,NULL,'{"activities":[{"after":[],"amounts":[],"cautions":[],"detail":"","dish":-1,"duration":{"high":120,"likely":120,"low":120},"endsBySight":false,"hands":"throughout","handsAtEnd":0,"handsAtStart":0,"jars":0,"key":"class/opening","kind":"opening","load":-1,"lookFor":"","mayPause":false,"presenterOnly":true,"pulse":null,"stationHolds":[],"title":"class/opening"},{"after":[0],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":480,"likely":420,"low":360},"endsBySight":true,"hands":"pulses","handsAtEnd":20,"handsAtStart":20,"jars":0,"key":"tray","kind":"step","load":-1,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":{"action":"Turn the tray","gapHigh":120,"gapLow":60,"takes":15},"stationHolds":[0],"title":"tray"},{"after":[0],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":900,"likely":600,"low":400},"endsBySight":true,"hands":"ends","handsAtEnd":0,"handsAtStart":30,"jars":0,"key":"pot","kind":"step","load":-1,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":null,"stationHolds":[1],"title":"pot"},{"after":[1,2],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":240,"likely":180,"low":120},"endsBySight":false,"hands":"throughout","handsAtEnd":0,"handsAtStart":0,"jars":0,"key":"fill","kind":"step","load":-1,"lookFor":"","mayPause":true,"presenterOnly":false,"pulse":null,"stationHolds":[1],"title":"fill"},{"after":[],"amounts":[],"cautions":[],"detail":"","dish":-1,"duration":{"high":1500,"likely":1200,"low":900},"endsBySight":true,"hands":"ends","handsAtEnd":0,"handsAtStart":60,"jars":0,"key":"canner/preheat","kind":"preheat","load":-1,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":null,"stationHolds":[],"title":"canner/preheat"},{"after":[3,4],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":150,"likely":105,"low":80},"endsBySight":false,"hands":"throughout","handsAtEnd":0,"handsAtStart":0,"jars":0,"key":"canner/load-1/lower","kind":"lower","load":0,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":null,"stationHolds":[2],"title":"canner/load-1/lower"},{"after":[5],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":1000,"likely":670,"low":550},"endsBySight":true,"hands":"ends","handsAtEnd":10,"handsAtStart":0,"jars":0,"key":"canner/load-1/heat-up","kind":"heat-up","load":0,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":null,"stationHolds":[2],"title":"canner/load-1/heat-up"},{"after":[6],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":900,"likely":900,"low":900},"endsBySight":false,"hands":"none","handsAtEnd":0,"handsAtStart":0,"jars":0,"key":"canner/load-1/process","kind":"process","load":0,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":null,"stationHolds":[2],"title":"canner/load-1/process"},{"after":[7],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":300,"likely":300,"low":300},"endsBySight":false,"hands":"ends","handsAtEnd":0,"handsAtStart":30,"jars":0,"key":"canner/load-1/rest","kind":"rest","load":0,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":null,"stationHolds":[2],"title":"canner/load-1/rest"},{"after":[8],"amounts":[],"cautions":[],"detail":"","dish":0,"duration":{"high":105,"likely":70,"low":50},"endsBySight":false,"hands":"throughout","handsAtEnd":0,"handsAtStart":0,"jars":0,"key":"canner/load-1/lift","kind":"lift","load":0,"lookFor":"","mayPause":false,"presenterOnly":false,"pulse":null,"stationHolds":[2],"title":"canner/load-1/lift"},{"after":[9],"amounts":[],"cautions":[],"detail":"","dish":-1,"duration":{"high":180,"likely":180,"low":180},"endsBySight":false,"hands":"throughout","handsAtEnd":0,"handsAtStart":0,"jars":0,"key":"class/closing","kind":"closing","load":-1,"lookFor":"","mayPause":false,"presenterOnly":true,"pulse":null,"stationHolds":[],"title":"class/closing"}],"altitude":"","classId":"small-class","closing":10,"dishes":[{"allergens":[],"id":"beans","jar":"pint","jars":4,"shelfLife":"","source":"","storage":"","title":"Beans"}],"format":1,"helpers":1,"kitchenCloser":"","kitchenSlot":null,"limits":[{"atMost":300,"from":2,"kind":"safety","remedy":"bring it back to the boil","to":3},{"atMost":300,"from":3,"kind":"quality","remedy":"reheat","to":5}],"loads":[{"canner":2,"dish":0,"heatUp":6,"jar":"pint","jars":4,"lift":9,"lower":5,"method":"boiling-water","number":1,"pack":"hot","process":7,"processTime":900,"rest":8,"tableEntry":"made-up entry","tableSource":""}],"notes":[],"opening":0,"readingDistance":0,"slot":4500,"startUtcMs":0,"stationHolds":[{"activities":[1],"candidates":[0],"vessel":"oven"},{"activities":[2,3],"candidates":[1],"vessel":"pot"},{"activities":[5,6,7,8,9],"candidates":[2],"vessel":"canner"}],"stations":[{"heat":"none","id":"oven","kind":"oven","name":"oven","power":null},{"heat":"none","id":"burner","kind":"burner","name":"burner","power":null},{"heat":"none","id":"canner","kind":"canner","name":"canner","power":null}],"talk":[{"activity":1,"dish":0,"key":"turn","length":30,"mayDrop":false,"mustSay":true,"text":"Turn the tray so that every side browns."},{"activity":-1,"dish":-1,"key":"altitude","length":60,"mayDrop":false,"mustSay":true,"text":"Water boils cooler up here."},{"activity":-1,"dish":-1,"key":"shelf","length":60,"mayDrop":true,"mustSay":false,"text":"Best within a year."}],"teacher":"A teacher","title":"A small class","venueName":"Grange hall"}',12);
CREATE TABLE event (
    session  TEXT    NOT NULL REFERENCES session (id),
    sequence INTEGER NOT NULL CHECK (sequence >= 1),
    kind     TEXT    NOT NULL,
    utc_ms   INTEGER NOT NULL,
    boot_ms  INTEGER NOT NULL,
    boot_id  TEXT    NOT NULL,
    cause    TEXT    NOT NULL,
    activity TEXT,
    load     INTEGER,
    value    INTEGER NOT NULL,
    sealed   INTEGER NOT NULL,
    unsealed INTEGER NOT NULL,
    broken   INTEGER NOT NULL,
    text     TEXT    NOT NULL,
    PRIMARY KEY (session, sequence)
) STRICT, WITHOUT ROWID;
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',1,'session-started',1790000000000,10800000,'00000000000000050000000000000001','key',NULL,NULL,1,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',2,'reading-taken',1790000000000,10800000,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',3,'activity-started',1790000000000,10800000,'00000000000000050000000000000001','key','canner/preheat',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',4,'activity-started',1790000000000,10800000,'00000000000000050000000000000001','key','class/opening',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',5,'activity-finished',1790000000000,10800000,'00000000000000050000000000000001','key','class/opening',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',6,'activity-started',1790000000000,10800000,'00000000000000050000000000000001','key','pot',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',7,'point-said',1790000000000,10800000,'00000000000000050000000000000001','key',NULL,NULL,1,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',8,'activity-started',1790000031908,10831908,'00000000000000050000000000000001','key','tray',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',9,'point-said',1790000031908,10831908,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',10,'undone',1790000031908,10831908,'00000000000000050000000000000001','key',NULL,NULL,9,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',11,'point-said',1790000031908,10831908,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',12,'reading-taken',1790000031908,10831908,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',13,'pulse-done',1790000142669,10942669,'00000000000000050000000000000001','key','tray',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',14,'undone',1790000174629,10974629,'00000000000000050000000000000001','key',NULL,NULL,13,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',15,'question-parked',1790000174629,10974629,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'may the lids be used again?');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',16,'question-parked',1790000174629,10974629,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'may the lids be used again?');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',17,'note-added',1790000174629,10974629,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',18,'pulse-done',1790000174629,10974629,'00000000000000050000000000000001','key','tray',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',19,'note-added',1790000201413,11001413,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',20,'reading-taken',1790000266596,11066596,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',21,'pulse-done',1790000266596,11066596,'00000000000000050000000000000001','key','tray',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',22,'reading-taken',1790000278390,11078390,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',23,'note-added',1790000301754,11101754,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',24,'note-added',1790000329797,11129797,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',25,'reading-taken',1790000356856,11156856,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',26,'pulse-done',1790000356856,11156856,'00000000000000050000000000000001','key','tray',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',27,'note-added',1790000375115,11175115,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',28,'activity-finished',1790000392661,11192661,'00000000000000050000000000000001','key','tray',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',29,'undone',1790000394465,11194465,'00000000000000050000000000000001','key',NULL,NULL,28,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',30,'activity-finished',1790000394465,11194465,'00000000000000050000000000000001','key','tray',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',31,'activity-finished',1790000404565,11204565,'00000000000000050000000000000001','key','pot',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',32,'reading-taken',1790000404565,11204565,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',33,'activity-started',1790000404565,11204565,'00000000000000050000000000000001','key','fill',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',34,'activity-finished',1790000404565,11204565,'00000000000000050000000000000001','key','fill',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',35,'question-parked',1790000411575,11211575,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'may the lids be used again?');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',36,'note-added',1790000550769,11350769,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',37,'reading-taken',1790000643304,11443304,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',38,'note-added',1790000643304,11443304,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',39,'reading-taken',1790000648693,11448693,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',40,'note-added',1790000668146,11468146,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',41,'note-added',1790000668146,11468146,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',42,'reading-taken',1790000679891,11479891,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',43,'question-parked',1790000773593,11573593,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'may the lids be used again?');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',44,'note-added',1790000879117,11679117,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',45,'reading-taken',1790000889511,11689511,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',46,'activity-finished',1790000900949,11700949,'00000000000000050000000000000001','key','canner/preheat',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',47,'activity-started',1790000900949,11700949,'00000000000000050000000000000001','key','canner/load-1/lower',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',48,'activity-finished',1790000900949,11700949,'00000000000000050000000000000001','key','canner/load-1/lower',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',49,'boil-seen',1790000900949,11700949,'00000000000000050000000000000001','held-key',NULL,0,900000,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',50,'note-added',1790000910909,11710909,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',51,'note-added',1790000924694,11724694,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',52,'note-added',1790000935280,11735280,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',53,'reading-taken',1790001005123,11805123,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',54,'note-added',1790001023313,11823313,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',55,'note-added',1790001042625,11842625,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',56,'reading-taken',1790001081410,11881410,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',57,'question-parked',1790001085248,11885248,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'may the lids be used again?');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',58,'question-parked',1790001114234,11914234,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'may the lids be used again?');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',59,'question-parked',1790001135957,11935957,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'may the lids be used again?');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',60,'note-added',1790001210554,12010554,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',61,'reading-taken',1790001235799,12035799,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',62,'reading-taken',1790001318055,12118055,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',63,'question-parked',1790001377977,12177977,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'may the lids be used again?');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',64,'note-added',1790001397216,12197216,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',65,'reading-taken',1790001397216,12197216,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',66,'question-parked',1790001464293,12264293,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'may the lids be used again?');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',67,'note-added',1790001482349,12282349,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',68,'reading-taken',1790001500419,12300419,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',69,'question-parked',1790001587934,12387934,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'may the lids be used again?');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',70,'question-parked',1790001591812,12391812,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'may the lids be used again?');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',71,'reading-taken',1790001623620,12423620,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',72,'reading-taken',1790001770205,12570205,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',73,'question-parked',1790001793759,12593759,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'may the lids be used again?');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',74,'heat-off',1790001805156,12605156,'00000000000000050000000000000001','key',NULL,0,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',75,'question-parked',1790001866487,12666487,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'may the lids be used again?');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',76,'note-added',1790001883502,12683502,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'the north burner is slow');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',77,'question-parked',1790001888504,12688504,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'may the lids be used again?');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',78,'reading-taken',1790002007236,12807236,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',79,'reading-taken',1790002021967,12821967,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',80,'reading-taken',1790002021967,12821967,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',81,'reading-taken',1790002062849,12862849,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',82,'reading-taken',1790002098700,12898700,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',83,'activity-started',1790002106323,12906323,'00000000000000050000000000000001','held-key','canner/load-1/lift',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',84,'reading-taken',1790002106323,12906323,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',85,'activity-finished',1790002106323,12906323,'00000000000000050000000000000001','key','canner/load-1/lift',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',86,'activity-started',1790002106323,12906323,'00000000000000050000000000000001','key','class/closing',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',87,'activity-finished',1790002106323,12906323,'00000000000000050000000000000001','key','class/closing',NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',88,'station-off',1790002106323,12906323,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',89,'station-off',1790002106323,12906323,'00000000000000050000000000000001','key',NULL,NULL,1,0,0,0,'');
INSERT INTO event VALUES('66fd5dad5b6a7721fb9cdff3df41262f',90,'session-closed',1790002106323,12906323,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'');
INSERT INTO event VALUES('f692e42054c81f47bf65b6fb3fbf010d',1,'session-started',1790000000000,10800000,'00000000000000050000000000000001','key',NULL,NULL,1,0,0,0,'');
INSERT INTO event VALUES('f692e42054c81f47bf65b6fb3fbf010d',2,'reading-taken',1790000000000,10800000,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
INSERT INTO event VALUES('f692e42054c81f47bf65b6fb3fbf010d',3,'activity-started',1790000000000,10800000,'00000000000000050000000000000001','key','canner/preheat',NULL,0,0,0,0,'');
INSERT INTO event VALUES('f692e42054c81f47bf65b6fb3fbf010d',4,'activity-started',1790000000000,10800000,'00000000000000050000000000000001','key','class/opening',NULL,0,0,0,0,'');
INSERT INTO event VALUES('f692e42054c81f47bf65b6fb3fbf010d',5,'activity-finished',1790000000000,10800000,'00000000000000050000000000000001','key','class/opening',NULL,0,0,0,0,'');
INSERT INTO event VALUES('f692e42054c81f47bf65b6fb3fbf010d',6,'activity-started',1790000000000,10800000,'00000000000000050000000000000001','key','pot',NULL,0,0,0,0,'');
INSERT INTO event VALUES('f692e42054c81f47bf65b6fb3fbf010d',7,'point-said',1790000000000,10800000,'00000000000000050000000000000001','key',NULL,NULL,1,0,0,0,'');
INSERT INTO event VALUES('f692e42054c81f47bf65b6fb3fbf010d',8,'activity-started',1790000031908,10831908,'00000000000000050000000000000001','key','tray',NULL,0,0,0,0,'');
INSERT INTO event VALUES('f692e42054c81f47bf65b6fb3fbf010d',9,'point-said',1790000031908,10831908,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'');
INSERT INTO event VALUES('f692e42054c81f47bf65b6fb3fbf010d',10,'undone',1790000031908,10831908,'00000000000000050000000000000001','key',NULL,NULL,9,0,0,0,'');
INSERT INTO event VALUES('f692e42054c81f47bf65b6fb3fbf010d',11,'point-said',1790000031908,10831908,'00000000000000050000000000000001','key',NULL,NULL,0,0,0,0,'');
INSERT INTO event VALUES('f692e42054c81f47bf65b6fb3fbf010d',12,'reading-taken',1790000031908,10831908,'00000000000000050000000000000001','key',NULL,NULL,82500,0,0,0,'celsius');
CREATE TABLE session_dish (
    session TEXT NOT NULL REFERENCES session (id),
    dish    TEXT NOT NULL,
    title   TEXT NOT NULL,
    PRIMARY KEY (session, dish)
) STRICT, WITHOUT ROWID;
INSERT INTO session_dish VALUES('66fd5dad5b6a7721fb9cdff3df41262f','beans','Beans');
INSERT INTO session_dish VALUES('f692e42054c81f47bf65b6fb3fbf010d','beans','Beans');
CREATE TABLE finding_choice (
    teacher        TEXT    NOT NULL,
    venue          TEXT    NOT NULL,
    subject        TEXT    NOT NULL,
    title          TEXT    NOT NULL,
    accepted       INTEGER NOT NULL CHECK (accepted IN (0, 1)),
    mean           REAL    NOT NULL,
    sd             REAL    NOT NULL,
    weight         REAL    NOT NULL,
    times          INTEGER NOT NULL,
    sessions       INTEGER NOT NULL,
    rehearsed      INTEGER NOT NULL,
    decided_utc_ms INTEGER NOT NULL,
    PRIMARY KEY (teacher, venue, subject)
) STRICT, WITHOUT ROWID;
INSERT INTO finding_choice VALUES('A teacher','Grange hall','tray','Tray',1,1.1000000000000000888,0.2000000000000000111,0.5,3,2,1,1790000000000);
CREATE INDEX session_by_start ON session (started_utc_ms);
COMMIT;
