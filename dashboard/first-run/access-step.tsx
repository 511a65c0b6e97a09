import { ChoosePinForm } from '../access/choose-pin-form.tsx';
import { LogInForm } from '../access/log-in-form.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { Screen } from './screen.tsx';
import type { StepProps } from './step-props.ts';

/** Who may change things: a first PIN, or the one there is. */
export function AccessStep({ session, again, goOn }: StepProps) {
  const { live } = useShed();
  const { access } = useReader().words.firstRun;
  const mayChange = session.role === 'operate' || session.role === 'own';
  const isDone = session.pinSet && mayChange;
  const taken = () => {
    live.reopen();
    void again().then(goOn);
  };
  return (
    <Screen step="access" says={access.says} isDone={isDone} mayPass={mayChange}>
      {isDone && <p>{access.done}</p>}
      {!isDone && session.pinSet && (
        <>
          <p>{access.set}</p>
          <LogInForm onLoggedIn={taken} />
        </>
      )}
      {!session.pinSet && mayChange && (
        <>
          <p>{access.here}</p>
          <ChoosePinForm whose="own" proof="none" onSet={taken} />
        </>
      )}
      {!session.pinSet && !mayChange && (
        <>
          <p>{access.code}</p>
          <ChoosePinForm whose="own" proof="set-up-code" onSet={taken} />
        </>
      )}
    </Screen>
  );
}
