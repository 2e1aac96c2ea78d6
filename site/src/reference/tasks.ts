/** What belongs together in the reference: a heading and the sources, each a file or a folder below `src`, without its ending. */
export interface Task {
  readonly title: string;
  readonly sources: readonly string[];
}

/** An entry of a package, as an import names it, with the tasks that its page documents. */
export interface Entry {
  /** What follows the package's name; empty for the main entry. */
  readonly path: string;
  /** What it is for. */
  readonly what: string;
  readonly tasks: readonly Task[];
}

/** A package and its entries. A source stands in one task only: there its exports are documented, and the other entries lead there. */
export interface Library {
  readonly name: string;
  readonly what: string;
  readonly entries: readonly Entry[];
}

/** The whole reference, in the order in which one reads it. */
export const libraries: readonly Library[] = [
  {
    name: 'core',
    what: 'The mathematics: what a sensor on its hook-up must read, and whether a recorded sweep of it passes. Codes and numbers, no prose.',
    entries: [
      {
        path: '',
        what: 'Everything but the schemas, by task. Each name is documented on the page of the entry by use that it is also in.',
        tasks: [],
      },
      {
        path: 'circuit',
        what: 'The bench circuit and its operating point, sound or with a fault.',
        tasks: [
          {
            title: 'Describe a circuit',
            sources: ['circuit/circuit', 'circuit/terminals', 'circuit/faults'],
          },
          {
            title: 'Solve it',
            sources: [
              'circuit/operatingPoint',
              'circuit/determined',
              'circuit/circuitNetwork',
              'circuit/positionAt',
              'circuit/inParallel',
            ],
          },
          { title: 'Units', sources: ['units'] },
        ],
      },
      {
        path: 'expectation',
        what: 'What a sound sensor must read: curve and windows.',
        tasks: [
          { title: 'Curve over travel', sources: ['expectation/expectedCurve'] },
          {
            title: 'Windows at the stops',
            sources: ['expectation/expectedWindows', 'expectation/tolerances'],
          },
          { title: 'Hand it to the judgement', sources: ['expectation/expectation'] },
        ],
      },
      {
        path: 'model',
        what: 'Circuit, expectation, ratings and wrong connections together, and the way to the vehicle.',
        tasks: [
          {
            title: 'Choose the limiting resistor',
            sources: [
              'ratings/chooseLimiter',
              'ratings/ratings',
              'ratings/worstCase',
              'ratings/checkRatings',
              'ratings/compareRating',
            ],
          },
          { title: 'Recognise a wrong connection', sources: ['ratings/wrongConnections'] },
          { title: 'Uncertainty of a reading', sources: ['expectation/expectedBand'] },
          { title: 'What a load bends', sources: ['expectation/loadingErrors'] },
          {
            title: 'From a reading back to the wiper, and on to the vehicle',
            sources: ['expectation/positionAtOutput', 'expectation/carryReading'],
          },
        ],
      },
      {
        path: 'bench',
        what: 'Single questions at the bench, before and after refitting.',
        tasks: [
          { title: 'Set the closed position', sources: ['expectation/closedSetting'] },
          {
            title: 'Make dirt visible',
            sources: [
              'expectation/dirtEffect',
              'ratings/chooseBenchLoad',
              'expectation/blindStretch',
            ],
          },
          {
            title: 'Drops in supply and ground',
            sources: ['expectation/supplyAndGroundDrop'],
          },
          {
            title: 'Find a part by readings',
            sources: ['expectation/partsFromReadings', 'expectation/partReading'],
          },
          {
            title: 'Control unit and scan tool',
            sources: [
              'expectation/adcCount',
              'expectation/countedRatio',
              'expectation/throttlePercent',
            ],
          },
          { title: 'Check after refitting', sources: ['expectation/refitChecks'] },
        ],
      },
      {
        path: 'pins',
        what: 'Which terminal is which, from an ohmmeter’s readings.',
        tasks: [{ title: 'Find the terminals', sources: ['pins'] }],
      },
      {
        path: 'instruments',
        what: 'What instruments show, load and can miss.',
        tasks: [
          {
            title: 'Which instrument',
            sources: [
              'instruments/adviseInstruments',
              'instruments/rankInstruments',
              'instruments/sightOf',
              'instruments/chooseSetting',
              'instruments/stepByStep',
              'instruments/noticedFaults',
            ],
          },
          {
            title: 'Describe an instrument',
            sources: ['instruments/instrument', 'instruments/exampleInstruments'],
          },
          {
            title: 'What its display shows',
            sources: [
              'instruments/digitalDisplay',
              'instruments/needleDisplay',
              'instruments/needleMovement',
              'instruments/sampledDisplay',
              'instruments/integratorRejection',
              'instruments/dropout',
              'instruments/dropoutOf',
            ],
          },
          { title: 'Chance of catching a dropout', sources: ['instruments/chanceOfReading'] },
          {
            title: 'Its input as a part of the circuit',
            sources: [
              'instruments/inputLoad',
              'instruments/inputPath',
              'instruments/probedInput',
              'instruments/openWiper',
              'instruments/settlingError',
              'instruments/sourceResistance',
              'instruments/readingUncertainty',
            ],
          },
        ],
      },
      {
        path: 'score',
        what: 'Whether a recorded sweep passes, with what it is judged by.',
        tasks: [
          { title: 'Judge a sweep', sources: ['score'] },
          {
            title: 'Describe a recording',
            sources: [
              'capture/sweep',
              'capture/captureQuality',
              'capture/sampling',
              'capture/takenStamps',
            ],
          },
          {
            title: 'What a recording can show',
            sources: [
              'capture/chanceOfSamples',
              'capture/clipLevels',
              'capture/mainsRipple',
              'capture/sampleTimes',
              'acCoupled',
            ],
          },
          { title: 'Limits to judge by', sources: ['criteria'] },
          { title: 'Trouble codes', sources: ['score/troubleCodes'] },
        ],
      },
      {
        path: 'live',
        what: 'A sweep judged in chunks, while it is recorded.',
        tasks: [{ title: 'Judge while recording', sources: ['live'] }],
      },
      {
        path: 'compare',
        what: 'Two scores of one sensor, such as before and after cleaning.',
        tasks: [{ title: 'Compare two sweeps', sources: ['compare'] }],
      },
      {
        path: 'shape',
        what: 'Linearities, where the shaft’s position was recorded.',
        tasks: [{ title: 'Judge the shape of the curve', sources: ['shape'] }],
      },
      {
        path: 'trend',
        what: 'Values of one thing over time: whether they change.',
        tasks: [
          {
            title: 'Tell a change over time',
            sources: ['trend/fitTrend', 'trend/forecast', 'trend/pooledScatter'],
          },
        ],
      },
      {
        path: 'tracks',
        what: 'Two tracks of one housing.',
        tasks: [{ title: 'Compare the tracks', sources: ['tracks'] }],
      },
      {
        path: 'judgement',
        what: 'One reading beside its limits.',
        tasks: [
          {
            title: 'Compare a reading',
            sources: ['judgement/judgeReading', 'judgement/readingCheck'],
          },
        ],
      },
      {
        path: 'thermistor',
        what: 'Thermistors: their laws, both ways, and the band of sound ones.',
        tasks: [
          {
            title: 'Resistance and temperature',
            sources: [
              'thermistor/law',
              'thermistor/resistanceAt',
              'thermistor/temperatureAt',
              'thermistor/resistanceBand',
            ],
          },
          {
            title: 'In a bath, on a scan tool',
            sources: ['thermistor/timeInBath', 'thermistor/shownTemperature'],
          },
        ],
      },
      {
        path: 'pullUp',
        what: 'A thermistor on its pull-up.',
        tasks: [
          {
            title: 'Volts and ohms',
            sources: ['thermistor/divider', 'thermistor/selfHeating'],
          },
          {
            title: 'Find or choose the pull-up',
            sources: ['thermistor/pullUpFromPairs', 'thermistor/choosePullUp'],
          },
        ],
      },
      {
        path: 'thermistorFit',
        what: "A thermistor's law from measured points.",
        tasks: [{ title: 'Fit a law', sources: ['thermistor/fitThermistor'] }],
      },
      {
        path: 'thermistorVerdict',
        what: 'Whether a thermistor is sound.',
        tasks: [
          { title: 'Judge a thermistor', sources: ['thermistor/judgeThermistor'] },
          { title: 'Two sensors after a soak', sources: ['thermistor/compareSoaked'] },
        ],
      },
      {
        path: 'pressure',
        what: 'Pressure sensors: what they must read, and the steps of a pump-down.',
        tasks: [
          {
            title: 'Pressure and output',
            sources: ['pressure/pressureSensor', 'pressure/pressureRatio'],
          },
          {
            title: 'Under a pump',
            sources: ['pressure/heldSteps', 'pressure/leakTime', 'pressure/leakByDrift'],
          },
        ],
      },
      {
        path: 'pressureVerdict',
        what: 'Whether a pressure sensor is sound.',
        tasks: [{ title: 'Judge a pressure sensor', sources: ['pressure/judgePressure'] }],
      },
      {
        path: 'atmosphere',
        what: 'The air at the bench: its pressure, and where water boils in it.',
        tasks: [
          {
            title: 'Pressure at the bench',
            sources: [
              'atmosphere/stationPressure',
              'atmosphere/standardPressure',
              'pressure/shownPressure',
            ],
          },
          {
            title: 'Ice and boiling water',
            sources: ['atmosphere/bathTemperature', 'atmosphere/boilingTemperature'],
          },
        ],
      },
      {
        path: 'measures',
        what: 'Temperatures, pressures and heights as people write them.',
        tasks: [
          {
            title: 'Read and write measures',
            sources: [
              'measures/parseMeasure',
              'measures/parsePressure',
              'measures/formatMeasure',
              'measures/measureSpelling',
            ],
          },
        ],
      },
      {
        path: 'winding',
        what: 'Windings: their resistance at a temperature, what flows in them, whether they are right.',
        tasks: [
          {
            title: 'Resistance at a temperature',
            sources: [
              'winding/resistanceAtTemperature',
              'winding/temperatureOfWinding',
              'winding/conductor',
              'winding/winding',
            ],
          },
          { title: 'Judge a winding', sources: ['winding/judgeWinding', 'judgement/compareOhms'] },
          { title: 'A coil on a voltage', sources: ['winding/coilCurrent'] },
        ],
      },
      {
        path: 'twoState',
        what: 'Sensors and switches of two states: whether they are right.',
        tasks: [
          {
            title: 'Judge a sensor of two states',
            sources: [
              'twoState/judgeTwoState',
              'twoState/twoStateSensor',
              'twoState/twoStateReading',
              'judgement/checkLimits',
            ],
          },
        ],
      },
      {
        path: 'bounce',
        what: 'When a switch changed in a recording, and how it bounced.',
        tasks: [{ title: 'Bounce of a switch', sources: ['bounce/switchBounce'] }],
      },
      {
        path: 'contactless',
        what: 'Sensors without a wiper: how to recognise them, and what a limiting resistor leaves them.',
        tasks: [
          { title: 'Recognise a potentiometer', sources: ['contactless/recognisePotentiometer'] },
          { title: 'Supply behind a resistor', sources: ['contactless/starvedSupply'] },
        ],
      },
      {
        path: 'codes',
        what: 'Trouble codes of temperature and pressure sensors: what they say, and whose fault it is.',
        tasks: [
          {
            title: 'Read a trouble code',
            sources: [
              'codes/readTroubleCode',
              'codes/codeTable',
              'codes/compareCodeLimit',
              'codes/codesOfReadings',
            ],
          },
          { title: 'Plugged in and unplugged', sources: ['codes/locateCodeFault'] },
        ],
      },
      {
        path: 'simulate',
        what: 'Sweeps of a modelled sensor, for trying and testing.',
        tasks: [
          { title: 'Simulate a sweep', sources: ['simulate/simulateSweep', 'simulate/movement'] },
          { title: 'Faults to put in', sources: ['simulate/faults'] },
        ],
      },
      {
        path: 'envelope',
        what: 'Huge sweeps in few columns, for drawing.',
        tasks: [{ title: 'Draw a long recording', sources: ['envelope'] }],
      },
      {
        path: 'quantity',
        what: 'Quantities and preferred values as text.',
        tasks: [
          {
            title: 'Read and write quantities',
            sources: [
              'quantity/parseQuantity',
              'quantity/formatQuantity',
              'quantity/unitSpelling',
              'quantity/formatResistanceCode',
            ],
          },
          {
            title: 'Preferred values',
            sources: ['quantity/preferredValue', 'quantity/preferredValues'],
          },
        ],
      },
      {
        path: 'statistics',
        what: 'Uncertainties combined, by formula or by drawing; a straight line through points.',
        tasks: [
          {
            title: 'Combine uncertainties',
            sources: ['statistics/combineUncertainties', 'statistics/monteCarlo'],
          },
          { title: 'Fit a line', sources: ['statistics/straightLine'] },
          { title: 'Normal distribution', sources: ['statistics/normalQuantile'] },
        ],
      },
      {
        path: 'checks',
        what: 'Errors, and what comes in checked by rules for its fields; the other packages check by it.',
        tasks: [
          { title: 'Errors', sources: ['errors', 'inputErrorCode'] },
          {
            title: 'Check what comes in',
            sources: [
              'checks',
              'fields',
              'capture/checkRecorder',
              'capture/checkSweep',
              'expectation/checkExpectation',
              'score/checkScore',
              'quantity/quantityPattern',
            ],
          },
        ],
      },
      {
        path: 'schema',
        what: 'Schemas for unknown JSON; it needs `valibot` beside it, which the other entries don’t.',
        tasks: [{ title: 'Read unknown JSON', sources: ['schema'] }],
      },
    ],
  },
  {
    name: 'recordings',
    what: 'Recorded sweeps from delimited text and sound files.',
    entries: [
      {
        path: '',
        what: 'Recorded sweeps from delimited text and sound files.',
        tasks: [
          {
            title: 'Read a recording of any kind',
            sources: ['readRecording', 'piecesOf', 'samplesOf'],
          },
          {
            title: 'Read delimited text',
            sources: ['readDelimited', 'delimitedReader', 'delimitedOptions'],
          },
          {
            title: 'How a text was read',
            sources: ['chooseColumns', 'findEncoding', 'rowScanner', 'takenFrom'],
          },
          {
            title: 'Read a recorder while it writes',
            sources: [
              'live/liveReader',
              'live/stampClock',
              'live/rateFinder',
              'live/isTextOf',
              'live/usualRates',
              'findLayout',
            ],
          },
          { title: 'Read a sound file', sources: ['sound'] },
        ],
      },
    ],
  },
  {
    name: 'jobs',
    what: 'The job: sensor, hook-up, instrument, limits and recordings in one JSON file.',
    entries: [
      {
        path: '',
        what: 'A job read, checked and written, for Node and browsers; nothing here touches a file.',
        tasks: [
          { title: 'Read and write a job', sources: ['parseJob', 'readJob', 'writeJob', 'job'] },
          {
            title: 'What core takes of a job',
            sources: [
              'jobCircuit',
              'jobCriteria',
              'jobExpectation',
              'jobRecorder',
              'jobTolerances',
            ],
          },
          {
            title: 'Jobs of every kind of sensor',
            sources: ['readingsJob', 'parseAnyJob', 'readAnyJob', 'writeAnyJob'],
          },
          {
            title: 'Single readings',
            sources: ['judgeReadings', 'expectReadings', 'readPumpDown'],
          },
          { title: 'Watch a sweep while it is recorded', sources: ['watchSweep'] },
          { title: 'The worst of a score', sources: ['worstPlace', 'roughness'] },
          {
            title: 'Recordings of a job',
            sources: [
              'readJobRecording',
              'readJobPieces',
              'checkRecording',
              'findRecordings',
              'identifyRecording',
            ],
          },
        ],
      },
      {
        path: 'node',
        what: 'Files in Node: jobs loaded and saved, recordings read in pieces or judged, files written whole or not at all.',
        tasks: [
          { title: 'Load and save a job', sources: ['loadJob', 'loadAnyJob', 'saveJob'] },
          {
            title: 'Judge one recording, for a queue',
            sources: ['judgeOne', 'judgedRecording', 'hashedPieces'],
          },
          {
            title: 'Read and write files',
            sources: ['readFileBytes', 'filePieces', 'writeFileAtomically'],
          },
        ],
      },
    ],
  },
  {
    name: 'drawings',
    what: 'Circuit, curve, recorded sweep and travel map as SVG.',
    entries: [
      {
        path: '',
        what: 'The drawings as Preact components.',
        tasks: [
          { title: 'Draw the circuit', sources: ['CircuitDrawing', 'circuitDrawingProps'] },
          {
            title: 'Draw the bench as it lies there',
            sources: ['HookUpPicture', 'hookUpPictureProps', 'SettingPicture', 'TerminalsPicture'],
          },
          {
            title: 'Draw the expected curve',
            sources: ['CurveDrawing', 'curveDrawingProps', 'curveLayout'],
          },
          {
            title: 'Draw a recorded sweep',
            sources: ['TraceDrawing', 'traceDrawingProps', 'traceLayout', 'tracePlot'],
          },
          {
            title: 'Draw passes over one another',
            sources: ['PassesDrawing', 'passesDrawingProps'],
          },
          {
            title: 'Draw limits and readings over temperature or pressure',
            sources: ['ThermistorDrawing', 'PressureDrawing', 'bandDrawingProps'],
          },
          {
            title: 'Draw a recording held step by step',
            sources: ['StepsDrawing', 'stepsDrawingProps'],
          },
          {
            title: 'Draw where on the travel findings lie',
            sources: ['TravelMapDrawing', 'travelMapDrawingProps'],
          },
        ],
      },
      {
        path: 'svg',
        what: 'The same drawings as text, for those without Preact.',
        tasks: [
          {
            title: 'Write a drawing as text',
            sources: ['circuitSvg', 'curveSvg', 'traceSvg', 'travelMapSvg'],
          },
        ],
      },
    ],
  },
  {
    name: 'history',
    what: 'What changed of a sensor from recording to recording, and the file that it is kept in.',
    entries: [
      {
        path: '',
        what: 'Records out of results, and what they say of changes; for Node and browsers.',
        tasks: [
          {
            title: 'Make records',
            sources: ['recordOf', 'recordOfScore', 'readRecords', 'checkRecord', 'historyRecord'],
          },
          { title: 'Tell what changed', sources: ['sensorHistory', 'quantities'] },
        ],
      },
      {
        path: 'node',
        what: 'Records kept in one SQLite file; for Node.',
        tasks: [
          { title: 'Keep records', sources: ['openHistory', 'recordsInFile', 'saveHistory'] },
        ],
      },
    ],
  },
  {
    name: 'queue',
    what: 'Recordings judged by any number of workers by way of a queue on Redis; for Node only.',
    entries: [
      {
        path: '',
        what: 'Put recordings, work, look after what is parked, and where results are filed.',
        tasks: [
          {
            title: 'Put recordings and look after the queue',
            sources: ['queue/openQueue', 'queue/parkedMessage'],
          },
          {
            title: 'What stands in it',
            sources: [
              'message/message',
              'message/readMessage',
              'message/messageId',
              'message/jobDefinition',
            ],
          },
          { title: 'Work', sources: ['worker/startWorker'] },
          {
            title: 'Where recordings lie and results are filed',
            sources: [
              'storage/storage',
              'storage/folderStorage',
              'storage/bucketStorage',
              'storage/objectName',
              'storage/storageFault',
              'results/fileResult',
            ],
          },
          { title: 'Redis', sources: ['redis/redisPlace', 'redis/redisFault'] },
        ],
      },
    ],
  },
  {
    name: 'report',
    what: 'The report: one HTML file that opens again, or Markdown; for Node and browsers.',
    entries: [
      {
        path: '',
        what: 'The report: one HTML file that opens again, or Markdown; for Node and browsers.',
        tasks: [
          { title: 'Write a report', sources: ['reportHtml', 'reportMarkdown', 'report'] },
          {
            title: 'Write a report of single readings',
            sources: [
              'readingsReportHtml',
              'readingsReportMarkdown',
              'readingsReport',
              'readReadingsReport',
            ],
          },
          {
            title: 'Open a report again',
            sources: ['readReport', 'recheckReport', 'storedSweep'],
          },
          { title: 'Parts of a report in a page of yours', sources: ['RecordingPart'] },
        ],
      },
    ],
  },
  {
    name: 'explain',
    what: 'Results written as unit-checked steps that a reader can follow with a pocket calculator, and exercises.',
    entries: [
      {
        path: '',
        what: 'Results written as unit-checked steps that a reader can follow with a pocket calculator, and exercises.',
        tasks: [
          {
            title: 'The bench circuit',
            sources: [
              'circuit/explainOperatingPoint',
              'circuit/output',
              'circuit/explainLoadingError',
              'circuit/explainPosition',
              'circuit/explainDirt',
              'pins/explainTrack',
            ],
          },
          {
            title: 'Windows and uncertainty',
            sources: ['windows/explainWindow', 'windows/explainUncertainty'],
          },
          {
            title: 'Mistakes and the limiting resistor',
            sources: ['circuit/explainMistake', 'circuit/explainLimiter'],
          },
          {
            title: 'Vehicle',
            sources: [
              'vehicle/explainCarriedReading',
              'vehicle/explainSupplyDrop',
              'vehicle/explainClosedSetting',
            ],
          },
          { title: 'Instruments', sources: ['instruments/explainDropoutChance'] },
          {
            title: 'Other sensors',
            sources: [
              'sensors/explainThermistor',
              'sensors/explainThermistorFit',
              'sensors/explainOpenPort',
              'sensors/explainCoil',
            ],
          },
          {
            title: 'Judgements',
            sources: [
              'judgement/explainScore',
              'judgement/explainVisible',
              'judgement/explainFinding',
              'judgement/explainPlace',
              'judgement/explainCauses',
              'judgement/explainLimits',
            ],
          },
          { title: 'Only what is written', sources: ['whereWritten', 'quantity', 'expression'] },
          {
            title: 'Exercises',
            sources: ['exercises/makeExercise', 'exercises/checkAnswer', 'exercises/exercise'],
          },
        ],
      },
      {
        path: 'written',
        what: 'Workings as text, HTML and LaTeX; needs no mathjs.',
        tasks: [
          {
            title: 'Read and show a working',
            sources: ['working', 'workingText', 'workingHtml', 'workingLatex'],
          },
        ],
      },
    ],
  },
  {
    name: 'wording',
    what: 'Every English sentence and label, by the codes of core.',
    entries: [
      {
        path: '',
        what: 'Every English sentence and label, by the codes of core. Tables of words stand in one line each.',
        tasks: [
          {
            title: 'Say what was judged',
            sources: [
              'verdicts',
              'scoreSentences',
              'scoreLabels',
              'evidenceSentences',
              'criteriaWords',
              'advice',
              'causes',
              'findings',
              'findingRows',
              'checks',
              'checkRows',
              'troubleCodes',
            ],
          },
          {
            title: 'Say how a recording was read',
            sources: ['howRead', 'recordingSentences', 'stampsSentence', 'unitSentences'],
          },
          { title: 'While a sweep is recorded', sources: ['liveWords', 'liveCommandWords'] },
          { title: 'Many recordings together', sources: ['batchWords'] },
          { title: 'What changed over the years', sources: ['historyWords', 'historyPageWords'] },
          { title: 'Compare and report', sources: ['comparisonWords', 'reportWords'] },
          { title: 'Cautions', sources: ['cautions'] },
          {
            title: 'Say what a circuit does',
            sources: [
              'circuitNames',
              'connectionRows',
              'drawingWords',
              'dividerWords',
              'readingsWords',
              'limiterAdviceSentences',
              'planEntries',
              'planWords',
            ],
          },
          {
            title: 'Say what an instrument shows',
            sources: ['instrumentSentences', 'instrumentWords', 'spotWords'],
          },
          {
            title: 'Words of the other questions at the bench',
            sources: [
              'carryEntries',
              'closedSettingSentences',
              'settingEntries',
              'settingSentences',
              'dirtEntries',
              'dropEntries',
              'pinEntries',
              'pinFindingSentences',
              'pinSentences',
            ],
          },
          { title: 'Words of the command line', sources: ['commandHelp', 'commandWords'] },
          { title: 'Write names and numbers safely', sources: ['visibleText', 'formatAlike'] },
        ],
      },
      {
        path: 'pages',
        what: 'Words of forms and pages.',
        tasks: [
          {
            title: 'Words of forms and pages',
            sources: [
              'formWords',
              'checkPageWords',
              'checkSweepWords',
              'judgeWords',
              'shelfWords',
              'watchWords',
              'wayWords',
              'searchWords',
              'jobEntries',
            ],
          },
        ],
      },
      {
        path: 'sensors',
        what: "Words of the sensors beside the throttle's, by their pages and kinds.",
        tasks: [
          {
            title: 'Say what single readings mean',
            sources: [
              'judgedReadings',
              'expectedWords',
              'stepWords',
              'bounceSentences',
              'bandSentences',
            ],
          },
          {
            title: 'Advise on single readings',
            sources: [
              'thermistorReadingWords',
              'pressureReadingWords',
              'twoStateReadingWords',
              'windingReadingWords',
            ],
          },
          {
            title: 'Words of their pages',
            sources: [
              'lawEntries',
              'temperatureNowEntries',
              'airEntries',
              'bathEntries',
              'soakEntries',
              'curveEntries',
              'portEntries',
              'coilEntries',
              'stateEntries',
              'contactlessEntries',
              'codeEntries',
            ],
          },
        ],
      },
      {
        path: 'working',
        what: 'Words of workings and exercises.',
        tasks: [
          {
            title: 'Words of lessons',
            sources: ['lessonWords', 'exerciseSetWords'],
          },
          {
            title: 'Words of workings',
            sources: [
              'workingWords',
              'workingRules',
              'circuitWorkingWords',
              'windowWorkingWords',
              'mistakeWorkingWords',
              'vehicleWorkingWords',
              'instrumentWorkingWords',
              'sensorWorkingWords',
              'judgementWorkingWords',
            ],
          },
          {
            title: 'Words of exercises',
            sources: [
              'answerWords',
              'circuitExerciseWords',
              'recordingExerciseWords',
              'thermistorExerciseWords',
            ],
          },
        ],
      },
    ],
  },
];
