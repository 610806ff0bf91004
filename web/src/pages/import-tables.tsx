import { useState } from 'react';
import { useHeader } from '../app/study-header.ts';
import { ImportStep } from './import-step.tsx';
import { type FileStep, stepsOf } from './table-files.ts';

/** Brings the tables of a record into the study: look first, then import, each all or nothing. */
export function ImportPage() {
  const { title } = useHeader();
  const [steps, setSteps] = useState<readonly FileStep[]>([]);
  return (
    <div className="page">
      <h1>Import tables into {title}</h1>
      <p>
        Choose the CSV files or XLSX workbooks of a record, and rate books as JSON. What each file
        holds is guessed by its name (assemblies, parts, joints, vehicle, readings, claims); every
        further guess is shown before anything is written. They are in the order in which they build
        on each other.
      </p>
      <label className="field wide">
        Files
        <input
          type="file"
          multiple
          accept=".csv,.tsv,.txt,.xlsx,.json"
          onChange={(e) => setSteps(stepsOf([...(e.target.files ?? [])]))}
        />
      </label>
      <ol className="import-steps">
        {steps.map((step) => (
          <li key={step.file.name}>
            <ImportStep
              step={step}
              onChange={(changed) =>
                setSteps(steps.map((s) => (s.file === step.file ? changed : s)))
              }
            />
          </li>
        ))}
      </ol>
    </div>
  );
}
