import type { ComponentChildren } from 'preact';

interface PlainFormProps {
  onSend: (form: FormData, element: HTMLFormElement) => void;
  children: ComponentChildren;
}

/** A form that is sent by the page: neither checked nor loaded anew by the browser. */
export function PlainForm({ onSend, children }: PlainFormProps) {
  return (
    <form
      class="form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        const element = event.currentTarget;
        onSend(new FormData(element), element);
      }}
    >
      {children}
    </form>
  );
}
